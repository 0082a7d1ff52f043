/** The search: the engine and its index are fetched with the first letter, and what it finds becomes a list of links. */
import * as words from '../words/en/search.ts';

interface Part {
  readonly title: string;
  readonly url: string;
  readonly excerpt: string;
}
interface Page {
  readonly url: string;
  readonly excerpt: string;
  readonly content: string;
  readonly meta: { readonly title: string };
  readonly sub_results: readonly Part[];
}
interface Engine {
  options(options: { baseUrl: string; excerptLength: number }): Promise<void>;
  search(asked: string): Promise<{ readonly results: readonly { data(): Promise<Page> }[] }>;
}

const base = import.meta.env.BASE_URL;
const atOnce = 8;
let engine: Promise<Engine> | undefined;

async function started(): Promise<Engine> {
  const path = `${base}pagefind/pagefind.js`;
  const made: Engine = await import(/* @vite-ignore */ path);
  await made.options({ baseUrl: base, excerptLength: 20 });
  return made;
}

/** Starts the search of its page. What was asked stands in the address when it is sent, so that a search can be passed on. */
export function startSearch(): void {
  const find = <E extends HTMLElement>(selector: string) => document.querySelector<E>(selector)!;
  const form = find<HTMLFormElement>('.search-form');
  const field = find<HTMLInputElement>('.search-for');
  const count = find('.search-count');
  const list = find('.search-found');
  const more = find<HTMLButtonElement>('.search-more');
  let current = '';

  /** Lists what speaks of the words in the field; once more the same is no question. What was listed stays until the new is there. */
  async function ask() {
    const asked = field.value.trim();
    if (asked === current) return;
    current = asked;
    if (asked === '') return show('', []);
    try {
      engine ??= started();
      const { results } = await (await engine).search(asked);
      const dataOf = (from: number) => Promise.all(results.slice(from, from + atOnce).map((one) => one.data()));
      const pages = await dataOf(0);
      if (asked !== current) return;
      if (!pages.some((page) => speaksOf(asked, page))) return show(words.nothing(asked), []);
      show(words.found(results.length, asked), pages.map(entry));
      let next = pages.length;
      more.hidden = next >= results.length;
      more.onclick = async () => {
        const added = await dataOf(next);
        if (asked !== current) return;
        next += added.length;
        list.append(...added.map(entry));
        more.hidden = next >= results.length;
      };
    } catch {
      engine = undefined;
      current = '';
      show(words.failed, []);
    }
  }

  function show(said: string, entries: readonly Node[]) {
    count.textContent = said;
    list.replaceChildren(...entries);
    more.hidden = true;
  }

  form.hidden = false;
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    history.replaceState(null, '', `?q=${encodeURIComponent(field.value)}`);
    void ask();
  });
  let resting: ReturnType<typeof setTimeout>;
  field.addEventListener('input', () => {
    clearTimeout(resting);
    resting = setTimeout(() => void ask(), 150);
  });
  field.value ||= new URLSearchParams(location.search).get('q') ?? '';
  if (field.value !== '') void ask();
  field.focus();
}

/** A word that no page has is cut short by the engine until one has its beginning; less than four letters of it are none. */
function speaksOf(asked: string, { meta, content }: Page): boolean {
  const text = `${meta.title} ${content}`.toLowerCase();
  return asked
    .toLowerCase()
    .split(/\s+/)
    .some((word) => text.includes(word.slice(0, 4)));
}

/** A page that was found: its name, the words around what was asked, and up to two places in it. */
function entry({ url, meta, excerpt, sub_results }: Page): HTMLLIElement {
  const item = document.createElement('li');
  const places = sub_results.filter((part) => part.url !== url).slice(0, 2);
  item.append(link(url, meta.title), around(places[0]?.excerpt ?? excerpt));
  for (const place of places) item.append(link(place.url, place.title));
  return item;
}

function link(url: string, text: string): HTMLAnchorElement {
  const made = document.createElement('a');
  made.href = url;
  made.textContent = text;
  return made;
}

/** An excerpt comes as markup with nothing in it but marks and escaped brackets; it goes into the page as text. */
function around(excerpt: string): HTMLParagraphElement {
  const said = document.createElement('p');
  for (const [index, part] of excerpt.split(/<\/?mark>/).entries()) {
    const text = part.replaceAll('&lt;', '<').replaceAll('&gt;', '>');
    if (index % 2 === 0) said.append(text);
    else said.appendChild(document.createElement('mark')).textContent = text;
  }
  return said;
}
