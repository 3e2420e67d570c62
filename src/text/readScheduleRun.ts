import { ScheduleFault, type FaultReason } from './readScheduleFaults';
import type { Token } from './readScheduleTokens';

/** Tokens being read from the first to the last. */
export class TokenRun {
  private at = 0;
  private readonly tokens: readonly Token[];

  constructor(tokens: readonly Token[]) {
    this.tokens = tokens;
  }

  /** The token that stands `ahead` of the next one, if there is one. */
  peek(ahead = 0): Token | undefined {
    return this.tokens[this.at + ahead];
  }

  /** Whether a word of the pattern stands there. */
  is(pattern: RegExp, ahead = 0): boolean {
    const token = this.peek(ahead);
    return token?.kind === 'word' && pattern.test(token.word);
  }

  isKind(kind: Token['kind'], ahead = 0): boolean {
    return this.peek(ahead)?.kind === kind;
  }

  /** Whether nothing more stands before the next comma, break or bracket. */
  ended(): boolean {
    const token = this.peek();
    return token === undefined || ['comma', 'break', 'open', 'close'].includes(token.kind);
  }

  next(): Token | undefined {
    const token = this.peek();
    this.at += 1;
    return token;
  }

  /** Takes the word of the pattern that comes next, or null where there is none. */
  take(pattern: RegExp): string | null {
    const token = this.peek();
    if (token?.kind !== 'word' || !pattern.test(token.word)) return null;
    this.at += 1;
    return token.word;
  }

  takeNumber(): number | null {
    const token = this.peek();
    if (token?.kind !== 'number') return null;
    this.at += 1;
    return token.value;
  }

  takeOrdinal(): number | null {
    const token = this.peek();
    if (token?.kind !== 'ordinal') return null;
    this.at += 1;
    return token.value;
  }

  /** The token before the next one. */
  before(): Token | undefined {
    return this.tokens[this.at - 1];
  }

  /** @throws ScheduleFault at the next token, or at the last one where the text ends */
  refuse(reason: FaultReason): never {
    const token = this.peek() ?? this.tokens.at(-1);
    throw new ScheduleFault(reason, token?.start ?? 0, token?.end ?? 0);
  }
}
