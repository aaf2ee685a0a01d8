// Published as sw.js, under the same address, when a release is so bad that its pages do not run. It takes the place
// of the bad one at once and answers nothing: pages come from the network again. It deletes nothing. The next good
// release takes its place in the ordinary way.
self.addEventListener('install', () => self.skipWaiting());
