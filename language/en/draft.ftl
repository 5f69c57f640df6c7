### Writing a spec.
