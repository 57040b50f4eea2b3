/**
 * The only door to zod. Compiling validators from text is switched off before any schema is made: the page's
 * content policy forbids it.
 */
import { z } from 'zod';

z.config({ jitless: true });

export { z };
