"""Worker processes: every task comes to an end, whatever becomes of the process at work on it."""

import os
import signal
import time

from app.pack_workers import Lost, Workers


def work(task):
    """What a test tells a worker to do."""
    match task:
        case int():
            return task * 2
        case "process":
            return os.getpid()
        case "raise":
            raise ValueError("no such luck")
        case "leave":
            os._exit(7)
        case "crash":
            os.kill(os.getpid(), signal.SIGKILL)
        case "hang":
            time.sleep(600)
    raise AssertionError(task)


def done(tasks, jobs=2, **options):
    with Workers(jobs, **options) as workers:
        return dict(workers.run(work, tasks))


def test_every_task_is_done_once():
    assert done([1, 2, 3, 4, 5]) == {1: 2, 2: 4, 3: 6, 4: 8, 5: 10}


def test_a_process_that_ends_takes_one_task_with_it():
    found = done([1, "leave", 2, "crash", 3, "raise", 4], jobs=1)
    assert {task: outcome for task, outcome in found.items() if isinstance(task, int)} == {1: 2, 2: 4, 3: 6, 4: 8}
    assert "status 7" in found["leave"].why
    assert "signal 9" in found["crash"].why
    assert "no such luck" in found["raise"].why


def test_a_task_that_takes_too_long_is_given_up():
    found = done(["hang", 1], jobs=1, patience_s=2)
    assert isinstance(found["hang"], Lost)
    assert found[1] == 2


def test_processes_serve_on_from_one_run_to_the_next():
    with Workers(1) as workers:
        runs = [dict(workers.run(work, ["process"])) for _ in range(2)]
    assert runs[0] == runs[1] != {"process": os.getpid()}


def test_a_process_makes_room_for_a_new_one_in_time():
    with Workers(1, tasks_each=2) as workers:
        pids = [pid for _, pid in workers.run(work, ["process"] * 5)]
    assert pids[0] == pids[1] != pids[2] == pids[3] != pids[4]


def test_nothing_is_started_where_there_is_nothing_to_do():
    with Workers(4) as workers:
        assert not list(workers.run(work, []))
        assert not workers._workers


def test_stopping_does_not_wait_for_what_is_being_done():
    asked = []

    def stopped():
        asked.append(None)
        return len(asked) > 5

    begun = time.monotonic()
    with Workers(1) as workers:
        assert not list(workers.run(work, ["hang"], stopped))
    assert time.monotonic() - begun < 60  # the task sleeps for ten times that
