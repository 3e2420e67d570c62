/** Why no plan can be made of a valid design. */
export type PlanProblem =
  | { readonly kind: 'too-many-increases'; readonly from: number; readonly to: number; readonly pickup?: string }
  | { readonly kind: 'too-many-decreases'; readonly from: number; readonly to: number; readonly pickup?: string }
  | { readonly kind: 'nothing-to-pick-up'; readonly pickup: string }
  | { readonly kind: 'no-marker'; readonly pickup: string; readonly marker: number; readonly markers: number };

export class PlanError extends Error {
  readonly problem: PlanProblem;

  constructor(problem: PlanProblem) {
    super(problem.kind);
    this.name = 'PlanError';
    this.problem = problem;
  }
}
