const INDEX = `# Tidebell Hare

The hare first rang its bell between the pages of a Finnish comic fortnightly, half a year before
the game it belongs to could be bought anywhere. That order surprises most people who know the card
from the English Starter Box, and the [publisher's own page](source:qm-archive) gives the month
alone; the day rests on [the fortnightly itself](source:savukuikka).

Known from five countries: [](value:printings). Two share everything but the ink of a bell, two
share everything but their foil, and one was doubted until a member of the club lent a copy.

What is not known stands in its place: nobody has found a dated word on the club card.
`;

const MONTHLY = `# The January hare

Bound into the January 1998 number of [a Korean monthly](source:jusawigol), and on sale in
November 1997. Both [labels](source:plumb-label) and [lists](source:reedcutter) carry the year of
the cover. The release is [](value:release.kr-monthly).
`;

const SECOND = `# The pale bell

The second wave of the Starter Box corrects one line of text and prints the bell paler. Lists give
it the day of the first wave; [a shop in Leeds](source:shop-notices) had it in one week of May 1995.
`;

/** Texts of `story/`. */
export const STORY: ReadonlyMap<string, string> = new Map([
  ['story/index.md', INDEX],
  ['story/kr-monthly.md', MONTHLY],
  ['story/gb-second.md', SECOND],
]);
