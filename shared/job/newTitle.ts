/** What a job is called before anybody has named its car. */
export const NEW_TITLE = "New job";
