/**
 * Loads the core that was compiled for the browser. What it gives are the functions of `Bridge` and
 * the class `Truck`; the compiler of the core says nothing of their types to pages.
 */
export function load(path: string): Promise<{ exports: any }>;
