import { targetWords, teethInRuns } from "../../src/words/index.ts";
import type { Desk, View } from "./desk.ts";
import { el, fill } from "./el.ts";
import { findPanel } from "./find-panel.ts";
import type { Job } from "./job.ts";
import { jobOf, linkOf } from "./link.ts";
import { button, kindLine, refusalOf } from "./pieces.ts";
import { aloudAt, placePanel } from "./place-panel.ts";
import { setOutPanel } from "./set-out-panel.ts";
import { setUpPanel } from "./set-up-panel.ts";
import { tickList } from "./tick-list.ts";
import { staysAwake } from "./wake.ts";
import { type Walk, walkOf } from "./walk.ts";

/** The most jobs that are kept to be gone on with. */
const mostKept = 12;

/** Works through a job, one place at a time; without one, those that were begun. */
export function jobView(desk: Desk): View {
  const node = el("div", {});
  return {
    node,
    show(said) {
      staysAwake(false);
      if ([...said.keys()].length < 2)
        return fill(
          node,
          jobsBegun(desk, () => this.show(said)),
        );
      try {
        const asked = jobOf(said, desk.known);
        const kept = keptOf(asked, desk);
        const walk = walkOf(kept ?? asked);
        fill(node, workThrough(walk, kept !== null && kept.done !== asked.done ? asked.done : null, desk));
      } catch (error) {
        fill(
          node,
          el("h2", {}, "JOB"),
          el("p", { class: "refused", role: "alert" }, refusalOf(error)),
          jobsBegun(desk, () => this.show(said)),
        );
      }
    },
  };
}

/** The same job as this browser has kept it, with its own place. */
function keptOf(asked: Job, desk: Desk): Job | null {
  const link = withoutPlace(linkOf(asked, desk.known));
  const kept = desk.jobs().find((each) => withoutPlace(each) === link);
  return kept === undefined ? null : readLink(kept, desk);
}

function readLink(link: string, desk: Desk): Job | null {
  try {
    return jobOf(new URLSearchParams(link.slice(1)), desk.known);
  } catch {
    return null;
  }
}

function withoutPlace(link: string): string {
  return link.replace(/&done=\d+$/, "");
}

/** The job in the browser and in the address, so that neither reload nor a flat battery loses the place. */
function keepPlace(job: Job, desk: Desk): void {
  const link = linkOf(job, desk.known);
  const others = desk.jobs().filter((each) => withoutPlace(each) !== withoutPlace(link));
  desk.setJobs([link, ...others].slice(0, mostKept));
  history.replaceState(null, "", link);
}

/** @param linkSays - How many are done by the link, where this browser has kept another place; else null. */
function workThrough(begun: Walk, linkSays: number | null, desk: Desk): readonly HTMLElement[] {
  let walk = begun;
  const place = el("div", { class: "place" });
  const aloud = el("p", { class: "aloud", role: "status" });
  const notice = el("p", { class: "notice" });
  const done = button("Done", () => goTo(walk.job.done + 1), "main");
  const back = button("Back", () => goTo(walk.job.done - 1), "back");
  const ticks = tickList(walk, jump);

  function goTo(count: number) {
    walk = { ...walk, job: { ...walk.job, done: Math.max(0, Math.min(walk.steps.length, count)) } };
    fill(notice);
    show();
  }

  /** To a place out of the order of work: the way back stays open. */
  function jump(count: number) {
    const before = walk.job.done;
    goTo(count);
    fill(
      notice,
      `${walk.job.done} done. `,
      button(`Undo: ${before} done`, () => goTo(before)),
    );
    scrollTo(0, 0);
  }

  function show() {
    const isOver = walk.job.done === walk.steps.length;
    keepPlace(walk.job, desk);
    fill(place, placePanel(walk));
    fill(aloud, aloudAt(walk));
    done.disabled = isOver;
    back.disabled = walk.job.done === 0;
    ticks.show(walk);
    staysAwake(!isOver);
  }

  show();
  if (linkSays !== null)
    fill(
      notice,
      `This browser has the job with ${walk.job.done} done; the link says ${linkSays}. `,
      button(`Take ${linkSays} done`, () => goTo(linkSays)),
    );
  return [
    el("h2", {}, walk.title),
    ...(walk.plan.exact ? [] : [kindLine(walk.plan.way)]),
    notice,
    place,
    aloud,
    el("div", { class: "bar" }, back, done),
    findPanel(() => walk, jump),
    ticks.node,
    setUpPanel(walk),
    setOutPanel(walk, desk),
    linkPanel(() => linkOf(walk.job, desk.known)),
  ];
}

/** The link that carries the place to another time or another phone. */
function linkPanel(link: () => string): HTMLElement {
  const text = el("input", { readonly: true, class: "link", "aria-label": "Link of this job" });
  const copied = el("span", { role: "status" });
  const copy = button("Copy the link of this place", () => {
    text.value = `${location.href.split("#")[0]}${link()}`;
    text.hidden = false;
    text.select();
    // Where the browser forbids it the link is selected, to be copied by hand.
    navigator.clipboard?.writeText(text.value).then(
      () => fill(copied, " Copied."),
      () => fill(copied, " Selected: copy it."),
    );
  });
  text.hidden = true;
  return el("p", { class: "tools" }, copy, copied, text);
}

/** Jobs to go on with. */
function jobsBegun(desk: Desk, changed: () => void): HTMLElement {
  const links = desk.jobs();
  const jobs = links.flatMap((link) => {
    const job = readLink(link, desk);
    return job === null ? [] : [{ link, job }];
  });
  if (jobs.length === 0) return el("p", {}, "No job is begun. Ask a count, or plan a repair, and take “Work through it”.");
  return el(
    "section",
    {},
    el("h2", {}, "JOBS BEGUN"),
    el(
      "ul",
      { class: "ways" },
      jobs.map(({ link, job }) =>
        el(
          "li",
          { class: "row" },
          el("a", { href: link, class: "button" }, el("b", {}, titleOf(job)), ` ${job.done} done, ${job.head.name}`),
          button("Forget", () => {
            desk.setJobs(links.filter((each) => each !== link));
            changed();
          }),
        ),
      ),
    ),
  );
}

function titleOf({ work }: Job): string {
  return work.kind === "divide" ? targetWords(work.target) : `REPAIR: ${teethInRuns(work.gear.damaged)} of ${work.gear.teeth}`;
}
