"""The planner: bowings proven best for an accent plan."""

from core.planner.alternatives import alternatives
from core.planner.phrase_plans import work_out_plan
from core.planner.plan import Plan, plan_bowing
from core.planner.problem import Problem, RefusedPlanError, pose
from core.planner.score import Score, score
from core.planner.settings import Flow, PlannerSettings, Weights

__all__ = [
    "Flow", "Plan", "PlannerSettings", "Problem", "RefusedPlanError", "Score", "Weights",
    "alternatives", "plan_bowing", "pose", "score", "work_out_plan",
]  # fmt: skip
