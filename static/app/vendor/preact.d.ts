/** The build puts htm's standalone Preact here. */
export * from 'htm/preact';
export { createContext } from 'preact';
