/** This folder's door to zod, with compiling from text switched off: the page's policy forbids it. */
import { config, z } from 'zod';

config({ jitless: true });

export { z };
