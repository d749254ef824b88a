import { allMethods } from "../src/index.ts";
import { usualHead } from "./command-line.ts";

/** What `--help` prints. */
export const help: string = `Turns & Holes: exact dividing-head indexing.

  turns-and-holes COUNT|ANGLE [options]   look up one count or one angle
  turns-and-holes gives MOVE [options]    the reverse: what a move really gives
  turns-and-holes spacing ANGLES          unequal spaces, as of a reamer
  turns-and-holes gear TEETH [options]    a gear's measures; what gear it is
  turns-and-holes repair TEETH [options]  a gear with broken teeth, all of it
  turns-and-holes heads                   list the ready heads
  turns-and-holes booklet [options]       print the booklet of a head (PDF)

Examples
  turns-and-holes 127
  turns-and-holes 96 --head ratio-40-plates-15-49-ungeared
  turns-and-holes 50 --all --mounted 2
  turns-and-holes "2°54'" --head my-head.json
  turns-and-holes 86 --teeth 3,4,31,60         teeth 3, 4, 31 and 60 of 86
  turns-and-holes 86 --after 31                what comes after tooth 31
  turns-and-holes 86 --ring 46.5               which tooth the ring stands at
  turns-and-holes 97 --near --radius 50        how far off, and in millimetres
  turns-and-holes 97 --teeth all --by ring --head ratio-90-dial
  turns-and-holes 12 --coordinates --radius 2in
  turns-and-holes "2.9° ± 0.05°"               which counts that could mean
  turns-and-holes spacing "58°,62°,59°,61°,60°,60°"
  turns-and-holes gives "0 + 22/33"            60
  turns-and-holes gives "0 + 5/15" --gears 56/24 --plate against       127
  turns-and-holes gear 86 --outside 176        which pitch; see gear --help
  turns-and-holes repair 86 --module 2 --damaged 31-33     see repair --help

An angle is written 2.9°, 2°54', 2d54m, 2:54:00, 1/124 rev or 10 gon.
A length is millimetres such as 50, or inches such as 2in; what is asked in
inches is answered in inches.

Which head
  --head ID|FILE      a ready head, or your own as a JSON file
                      (${usualHead} where none is named)
  --mounted PLATE     the plate that is on the head now: preferred

Which settings
  --method LIST       only these of ${allMethods.join(", ")}
  --teeth-per-move N  the most teeth to advance in one move, 1 to 1000 (12);
                      with gives: how many teeth the move is meant to advance
  --all               every method that does it, not only the preferred
  --limit N           list so many settings, and no more
  --near              the nearest settings too, with their errors; where
                      nothing is exact they are always there
  --radius LENGTH     of the work, to show errors as lengths: 50, or 2in
  --proof             the proof in full, and how it was shown

At the machine
  --teeth LIST|all    the positions of these teeth (3,4,31-33), in this order
  --after TOOTH       what is left to do after this tooth
  --by WAY            how they are set: by moves, made over and over; or each
                      by itself, by nearest-hole, dial or ring. Left out: an
                      exact setting, else whatever is the least off
  --nearer            go back where that is nearer; else always onward
  --ring ANGLE        the tooth that the degree ring stands at
  --start-hole N      the hole the pin starts in (0)
  --start-angle A     where the ring and dial stand at tooth 1 (0)
  --minus             ring and dial fall from there; else they rise
  --coordinates       x and y of every tooth on --radius, and the chords;
                      --tangents: all positive; --clockwise; --start-angle

The reverse question
  --gears A/B         gears of the move: 56/24, or 64*44/24*40
  --plate with|against  which way they turn the plate

  --json              the answer as data; lengths in millimetres
  --help, --version

An option that would change nothing is refused. It ends with 0 when there is
an exact setting, 1 when there is none, and 2 when the question could not be
read.
`;
