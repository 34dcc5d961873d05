/** The build puts idb here. */
export * from 'idb';
