/** What a body may hold; reads after "must be". */
export const PROSE_WORDS = 'paragraphs, **strong**, *emphasis*, links, and lists of at most two levels';
