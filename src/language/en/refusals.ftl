### Why an act is refused, and the way on.
