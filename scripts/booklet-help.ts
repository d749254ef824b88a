import { paperNames, partIds, wallPaperNames } from "../booklet/index.ts";
import { allMethods, readyHeads, waysBy } from "../src/index.ts";

/** What `booklet --help` prints. */
export const bookletHelp: string = `Print the book for a head: every count with its setting.

  turns-and-holes booklet                              the first ready head, A4
  turns-and-holes booklet --head ratio-40-faces-24-66  another ready head
  turns-and-holes booklet --head my-head.json --paper a5
                                        your own head, as an A5 booklet
  turns-and-holes booklet --as booklet --paper a5
                                        the same on A4, to print on both
                                        sides, fold and stitch
  turns-and-holes booklet --as wall --to 100
                                        sheets in large type for the wall
  turns-and-holes booklet --job 127     a sheet for one job, every position
                                        with a box to tick
  turns-and-holes booklet --job "2°54'" the same for an angle
  turns-and-holes booklet --job 62 --teeth 1,17-20
                                        for the teeth named, in that order
  turns-and-holes booklet --as drawings --out plates
                                        the plates as SVG files at true size,
                                        to drill through; with --job 127 a card
                                        to lay under the arms
  turns-and-holes booklet --to 200 --out ~/mine.pdf
                                        fewer counts, to a file of your choice
In a copy of the sources "npm run booklet --" stands for the first two words.

  --head FILE-or-ID   a ready head or a JSON file that describes yours
  --paper PAPER       ${paperNames.join(", ")}; for the wall
                      ${wallPaperNames.join(", ")}
  --out FILE          where to write; turns-and-holes-<head>.pdf or the like
                      where not given; of drawings, a directory
  --tagged            for screens and reading aloud: larger, with the order
                      of reading and drawings in words
  --force             write over a file that is not one of this program
  --help              this text

The book
  --as FORM           pages (the default), large (the same in large type),
                      booklet (half sheets to fold), wall (sheets for the
                      wall), poster and card (the counts that shops use
                      most), drawings (SVG files, at true size), or screen
                      (one file for a phone, without a network)
  --from N, --to N    the counts, 2 to 400 where not given
  --parts LIST        only these, with commas:
                      ${partIds.slice(0, 6).join(", ")},
                      ${partIds.slice(6, 11).join(", ")},
                      ${partIds.slice(11).join(", ")}
  --degrees LIST      every position of these counts, by dial and ring or the
                      nearest holes: 7,11,127 or 30-36
  --inches            chords of the plate check in inches

A job sheet instead: --job COUNT or ANGLE
  --as large          in large type
  --teeth LIST        some of its teeth, in this order: 1,17,40
  --by WAY            ${waysBy.join(", ")}; the best where not given
  --method LIST       only these of ${allMethods.join(", ")}
  --teeth-per-move N  the most teeth to advance in one move (12)
  --mounted PLATE     the plate that is on the head now: preferred
  --start-hole N      the hole the pin starts in (0)
  --start-angle A     where ring and dial stand at tooth 1 (0)
  --minus             ring and dial fall from there; else they rise

Ready heads
${readyHeads.map(({ id }) => `  ${id}`).join("\n")}
`;
