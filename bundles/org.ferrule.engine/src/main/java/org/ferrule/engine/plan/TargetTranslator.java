/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.List;
import java.util.Optional;

import org.ferrule.engine.translate.VesselWay;
import org.ferrule.escalation.state.Target;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Lesion;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.SideBranch;
import org.ferrule.quantity.Length;

/** Reads where a device must arrive. The tip of the guide catheter lies at the ostium, where paths begin. */
final class TargetTranslator {
    private final PlanProblems problems;
    private final PlanFigures figures;

    TargetTranslator(PlanProblems problems) {
        this.problems = problems;
        this.figures = new PlanFigures(problems);
    }

    Target translate(CaseDocument file) {
        Optional<Lesion> lesion = Optional.ofNullable(file.getLesion());
        if (lesion.isEmpty()) {
            problems.add(file, Literals.CASE_DOCUMENT__LESION, "the case has no lesion, so the reach is not known");
        }
        VesselWay way = new VesselWay(message -> problems.add(lesion.orElseThrow(), message));
        Optional<Length> reach = lesion.flatMap(way::end);
        Optional<Length> start = lesion.flatMap(new VesselWay(message -> {
        })::start);
        Optional<SideBranch> branch = Optional.ofNullable(file.getBranch());
        return new Target(reach, start, vessel(file, start),
                branch.flatMap(b -> figures.length(b, Literals.SIDE_BRANCH__DIAMETER)),
                branch.flatMap(this::branchReach), file.getPath() == null ? List.of()
                        : new VesselWay(message -> problems.add(file.getPath(), message)).bends(file.getPath(), reach));
    }

    /** The reference diameter of the lesion, else the diameter of the segment in which it begins. */
    private Optional<Length> vessel(CaseDocument file, Optional<Length> start) {
        Optional<Length> reference = Optional.ofNullable(file.getLesion())
                .flatMap(lesion -> figures.length(lesion, Literals.LESION__REFERENCE));
        return reference.or(() -> start.filter(s -> file.getPath() != null)
                .flatMap(s -> VesselWay.diameterAt(file.getPath(), s)));
    }

    private Optional<Length> branchReach(SideBranch branch) {
        Optional<Length> mouth = figures.length(branch, Literals.SIDE_BRANCH__AT);
        Optional<Length> depth = figures.length(branch, Literals.SIDE_BRANCH__DEPTH);
        return mouth.flatMap(m -> depth.map(m::plus));
    }
}
