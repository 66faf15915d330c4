/** What pages of records do better with a script. All of it is there without one. */
import { copies } from "./copy";
import { takesFile } from "./file";
import { answersByKey } from "./keypad";
import { liveSearch } from "./live_search";
import { putsInOrder } from "./order";
import { sayOnce } from "./saved";
import { takesWords } from "./suggestion";
import { asksBeforeLeaving, beginAtTheSummary } from "./unsaved";

for (const form of document.querySelectorAll<HTMLFormElement>("form[data-live]")) liveSearch(form);
for (const form of document.querySelectorAll<HTMLFormElement>("form[data-asks]")) asksBeforeLeaving(form);
for (const table of document.querySelectorAll<HTMLTableElement>("table[data-order]")) putsInOrder(table);
for (const button of document.querySelectorAll<HTMLButtonElement>("button[data-copy]")) copies(button);
for (const button of document.querySelectorAll<HTMLButtonElement>("button[data-into]")) takesWords(button);
for (const form of document.querySelectorAll<HTMLFormElement>("form[data-keypad]")) answersByKey(form);
for (const form of document.querySelectorAll<HTMLFormElement>("form[data-file]")) takesFile(form);
beginAtTheSummary();
sayOnce();
