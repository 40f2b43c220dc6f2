/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.Document;
import org.ferrule.model.check.plan.PlanChecks;

/** Checks the content of a document, as far as the document alone can tell. */
public final class Validation {

    private final List<Check> checks;

    /** Creates a validation with all rules, as of today. */
    public Validation() {
        this(LocalDate.now());
    }

    /**
     * Creates a validation with all rules.
     *
     * @param today what has expired before is told
     */
    public Validation(LocalDate today) {
        this(Stream.of(general(), devices(), rules(), PlanChecks.all(today)).flatMap(List::stream).toList());
    }

    /** Creates a validation with other rules. */
    public Validation(List<Check> checks) {
        this.checks = List.copyOf(checks);
    }

    private static List<Check> general() {
        return List.of(new RequiredCheck(), new IdCheck(), new NameCheck(), new ReferenceCheck(),
                new SectionNameCheck(), new PathCheck(), new SourceCheck(), new DateCheck(), new FigureCheck(),
                new RangeCheck());
    }

    private static List<Check> devices() {
        return List.of(new ShaftCheck(), new OpeningCheck(), new LumenCheck(), new WallCheck(), new CollarCheck(),
                new CrossSectionCheck(), new BalloonCheck(), new StentCheck());
    }

    private static List<Check> rules() {
        return List.of(new ClearanceCheck(), new SpanCheck(), new GrowthCheck(), new RatioBandCheck(),
                new LesionCheck(), new ConditionCheck(), new BendCheck(), new SignOffCheck());
    }

    /** Returns the problems of the document, rule by rule; the document is not changed. */
    public List<ModelProblem> check(Document document) {
        Examination examination = new Examination();
        List<EObject> objects = new ArrayList<>(List.of(document));
        EcoreUtil.getAllContents(document, true).forEachRemaining(child -> objects.add((EObject) child));
        checks.forEach(check -> objects.forEach(object -> check.check(object, examination)));
        return examination.problems();
    }
}
