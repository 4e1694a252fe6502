/** A stylesheet that Vite adds to the page when it is imported. */
declare module '*.css' {}
