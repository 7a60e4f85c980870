"""The planner: bowings proven best for an accent plan."""
