import type { Piece } from '../piece';
import type * as Choosing from './choosing';
import type * as Drafting from './drafting';
import type * as Outline from './outline';
import type { Sheet } from './sheet.svelte';
import type { CanvasTool } from './tool';
import { loadEditing, type Outcome, type Workbench } from './workbench.svelte';

type InUse =
  | ({ readonly kind: 'outline'; readonly tool: Outline.OutlineTool } & Pick<
      typeof Outline,
      'Bar' | 'Beside' | 'Marks'
    >)
  | ({ readonly kind: 'drafting'; readonly tool: Drafting.DraftingTool } & Pick<typeof Drafting, 'Bar' | 'Marks'>)
  | ({ readonly kind: 'choosing'; readonly tool: Choosing.ChoosingTool } & Pick<typeof Choosing, 'Bar' | 'Marks'>);

/** The tools that take the hand on the drawing, one at a time; each is fetched when it is first taken up. */
export class Tools {
  readonly #bench: Workbench;
  readonly #sheet: Sheet;
  inUse: InUse | null = $state.raw(null);

  constructor(bench: Workbench, sheet: Sheet) {
    this.#bench = bench;
    this.#sheet = sheet;
  }

  get tool(): CanvasTool | null {
    return this.inUse?.tool ?? null;
  }

  /** Takes a tool up, or puts it down where it is in use already. */
  async toggle(kind: 'outline' | 'choosing'): Promise<void> {
    const same = this.inUse?.kind === kind;
    this.putDown();
    if (same) return;
    await loadEditing();
    const taken = kind === 'outline' ? await this.#outline() : await this.#choosing();
    this.#sheet.wholeDesign = true;
    this.inUse = taken;
  }

  /** Draws a piece from nothing and hands it on. */
  async draft(finish: (piece: Piece) => Outcome): Promise<void> {
    this.putDown();
    await loadEditing();
    const { Bar, Marks, DraftingTool } = await import('./drafting');
    this.inUse = { kind: 'drafting', Bar, Marks, tool: new DraftingTool(this.#bench, this.#sheet, finish) };
  }

  putDown(): void {
    this.inUse?.tool.breakOff();
    this.inUse = null;
    this.#sheet.wholeDesign = false;
  }

  async #outline(): Promise<InUse> {
    const { Bar, Beside, Marks, OutlineTool } = await import('./outline');
    return { kind: 'outline', Bar, Beside, Marks, tool: new OutlineTool(this.#bench, this.#sheet) };
  }

  async #choosing(): Promise<InUse> {
    const { Bar, Marks, ChoosingTool } = await import('./choosing');
    return { kind: 'choosing', Bar, Marks, tool: new ChoosingTool(this.#bench, this.#sheet) };
  }
}
