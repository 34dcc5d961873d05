"""What must be said or refused about an option: one module per family of safety rules.

Each has a door ``notices(situation, draft)``; adding a rule is adding a module and its place in the list of
:mod:`planner.rules.register`. Three levels, never mixed: a stop refuses, a caution must be acknowledged and is printed,
a note informs. A code stands once on an option, for each caution is acknowledged by itself: a notice about an eye or a
muscle has them in its code (``above_usual_maximum-both-mr``). Every limit stands beside its provenance, marks and
figures as in the clinical reference.

``table_reach``      what the table answers and what it does not
``measurement``      the reading that the plan stands on
``principle``        a palsy or restriction that standard doses are not made for
``release``          a tight muscle that is not released
``table_source``     a table that nobody has checked
``maxima``           the most that is done to a muscle
``minima``           the least that is worth doing
``recti``            recti of one eye, at one sitting and over the years
``seeing_eye``       the only seeing, or far better seeing, eye
``operated_muscle``  a muscle that was operated before
``reserve``          what an earlier operation left of a muscle
``residual_esotropia``  what a series corrected after large medial recessions
``small_angle``      a deviation that already counts as success
``residual``         much left over, or much too much
``near``             near that goes its own way
``vertical``         a vertical deviation that the option leaves alone
``pattern``          an A or V pattern that the option leaves alone
``comitance``        a deviation that differs in side gaze
``convergence``      an exodeviation larger at near
``correction``       a target measured without the spectacles
``table_patients``   a patient unlike those of the source
``adjustable``       where an adjustable suture goes
``axial_length``     information that changes no dose
``age``              information that changes no dose
"""

from planner.rules.register import in_order, notices, of_muscles, of_whole

__all__ = ["in_order", "notices", "of_muscles", "of_whole"]
