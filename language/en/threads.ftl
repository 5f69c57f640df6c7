### Threads, messages and questions.
