/** The message of a person's set. */
export { messageEml } from './messageEml.ts';
export { messageText } from './messageText.ts';
