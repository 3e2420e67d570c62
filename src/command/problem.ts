import { commandProblemText, type CommandProblem } from '../text';

/** Something wrong with the command's words or its files. */
export class CommandError extends Error {
  readonly problem: CommandProblem;

  constructor(problem: CommandProblem) {
    super(commandProblemText(problem));
    this.name = 'CommandError';
    this.problem = problem;
  }
}
