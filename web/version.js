// Written anew by the build.
export const version = 'unbuilt';
