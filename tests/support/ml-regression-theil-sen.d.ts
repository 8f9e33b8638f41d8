/** The package brings no types. */
declare module "ml-regression-theil-sen" {
  export class TheilSenRegression {
    constructor(x: readonly number[], y: readonly number[]);
    readonly slope: number;
  }
}
