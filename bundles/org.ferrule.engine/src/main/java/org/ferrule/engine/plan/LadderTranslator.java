/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.translate.SourceIndex;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.StopRule;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Move;
import org.ferrule.model.TechniqueLibrary;

/** Copies techniques into a ladder. */
public final class LadderTranslator {

    /**
     * A ladder with what is wrong about it.
     *
     * @param ladder what can be planned with; what cannot is in it too, but is never possible
     * @param problems in the order in which they were found
     */
    public record TranslatedLadder(Ladder ladder, List<PlanProblem> problems) {
        public TranslatedLadder {
            problems = List.copyOf(problems);
        }
    }

    private final TechniqueLibrary library;
    private final PlanProblems problems;
    private final Set<String> ids = new HashSet<>();

    private LadderTranslator(TechniqueLibrary library, PlanProblems problems) {
        this.library = library;
        this.problems = problems;
    }

    /** The ladder of techniques whose roles name devices of a catalogue. */
    public static TranslatedLadder translate(TechniqueLibrary library, Catalogue catalogue) {
        PlanProblems problems = new PlanProblems();
        Ladder ladder = translate(library, new DeviceIds(catalogue, problems), problems);
        return new TranslatedLadder(ladder, problems.all());
    }

    static Ladder translate(TechniqueLibrary library, DeviceIds devices, PlanProblems problems) {
        return new LadderTranslator(library, problems).ladder(new RoleTranslator(devices, problems));
    }

    private Ladder ladder(RoleTranslator roles) {
        Undescribed undescribed = new Undescribed(library, problems);
        MoveTranslator moves = new MoveTranslator(library, roles, undescribed, problems);
        var setups = each(library.getSetups(), moves::setup);
        var techniques = each(library.getTechniques(), moves::technique);
        SourceIndex sources = new SourceIndex(library);
        return new Ladder(text(library.getTitle()), text(library.getRevision()), undescribed.facts(), setups,
                techniques, roles.translate(library.getBailOut()),
                library.getStopRules().stream().map(rule -> stopRule(rule, sources)).toList());
    }

    /** A second move of the same id could not be told from the first. */
    private <M extends Move, K> List<K> each(List<M> moves, Function<M, K> translation) {
        List<K> translated = new ArrayList<>();
        for (M move : moves) {
            if (move.getId() == null || !ids.add(move.getId())) {
                problems.add(move, Literals.MOVE__ID, move.getId() == null ? "has no id, and is left out"
                        : "another technique or set-up is called \"" + move.getId() + "\"; this one is left out");
            } else {
                translated.add(translation.apply(move));
            }
        }
        return translated;
    }

    private StopRule stopRule(org.ferrule.model.StopRule rule, SourceIndex sources) {
        boolean limits = rule.isSetResource() && rule.getLimit() != null;
        if (!limits && (rule.isSetResource() || rule.getLimit() != null)) {
            problems.add(rule, Literals.STOP_RULE__LIMIT,
                    "names a resource without a limit, or a limit without a resource: a person has to watch it");
        }
        return new StopRule(text(rule.getId()), text(rule.getWords()),
                limits ? Optional.of(Resource.ofWord(rule.getResource().getLiteral())) : Optional.empty(),
                limits ? OptionalDouble.of(rule.getLimit().doubleValue()) : OptionalDouble.empty(), sources.of(rule));
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}
