/** The release this page was built as, put in by the build. */
declare const __RELEASE__: string;
