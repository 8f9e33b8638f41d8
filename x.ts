import {tubeOutputFigure} from "#tests/bench/tube-output.ts"; console.log(tubeOutputFigure())
