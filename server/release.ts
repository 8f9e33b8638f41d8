import program from "#package.json" with { type: "json" };

/** The release of this program, like "0.2.0". */
export const release: string = program.version;
