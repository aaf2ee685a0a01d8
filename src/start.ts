// What the page names: the app itself lies in one script with the first screen.
import './main';

document.documentElement.dataset.release = __RELEASE__;
