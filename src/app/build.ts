/** Names this build of the program: the file of the entry is named after all that is in it and in what it loads. */
export const BUILD: string = import.meta.env.PROD ? import.meta.url : crypto.randomUUID();
