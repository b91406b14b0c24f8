/**
 * How files written here name their software. A file that names no other was not changed since, so its hidden and its
 * printed rests can be trusted to say what is not yet written and what is silence.
 */
export const SOFTWARE = 'Partwise';
