"""The planner: bowings proven best for an accent plan."""

from core.planner.account import Change, changes, difference
from core.planner.alternatives import alternatives
from core.planner.join_costs import JoinOdds
from core.planner.phrase_plans import work_out_plan
from core.planner.plan import Plan, plan_bowing
from core.planner.problem import Problem, RefusedPlanError, pose
from core.planner.score import Score, score
from core.planner.settings import Flow, PlannerSettings, Weights
from core.planner.suitability import Suited, sentence, suitability
from core.planner.versions import VERSIONS, Version, starting_versions

__all__ = [
    "VERSIONS", "Change", "Flow", "JoinOdds", "Plan", "PlannerSettings", "Problem", "RefusedPlanError", "Score",
    "Suited", "Version", "Weights", "alternatives", "changes", "difference", "plan_bowing", "pose", "score", "sentence",
    "starting_versions", "suitability", "work_out_plan",
]  # fmt: skip
