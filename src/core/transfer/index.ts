export { makeUnseenDeck, makeUnseenUnit } from './unseen.ts';
