/** How long nobody may touch a shared device before it goes back to the names. */

/** Minutes; null: never by itself. */
export const IDLE_CHOICES = [1, 2, 5, 10, 20, null] as const;
export type IdleMinutes = (typeof IDLE_CHOICES)[number];
export const USUAL_IDLE_MINUTES = 5;
