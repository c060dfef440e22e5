// What a new job needs, fetched as one piece.
export { questionsView } from "./firstQuestions.ts";
export { ownCar } from "./ownCar.ts";
