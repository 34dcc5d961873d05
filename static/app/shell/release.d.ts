/** Written by the build into every release. */
export interface Bundle {
  /** Absolute path that ends in a slash. */
  folder: string;
  files: string[];
}

export const release: {
  /** Version and content hash; the folder's name. */
  name: string;
  version: string;
  engine: { runtime: Bundle; planner: Bundle; pdf: Bundle };
};
