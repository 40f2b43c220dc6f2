/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.sensitivity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.change.Replacement;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.matrix.SolveCancelledException;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.verdict.Verdict;

/**
 * Ranks the dimensions and statements behind a matrix by the verdicts that rest on them: each is changed by itself and
 * the cells of its device are asked again, with all checks and statements.
 */
public final class Sensitivity {
    private static final Comparator<Influence> BY_WEIGHT = Comparator.comparingInt(Influence::changes)
            .thenComparingInt(Influence::decides).reversed();

    private final MatrixQuestion question;
    private final Optional<Device> wire;
    private final Verdict[][] verdicts;

    private Sensitivity(FitMatrix matrix, Optional<Device> wire) {
        this.question = matrix.question();
        this.wire = wire;
        this.verdicts = new Verdict[question.outer().size()][question.inner().size()];
    }

    /**
     * Every place on which a verdict rests, the weightiest first: by the verdicts that change, then by those that it
     * decides.
     *
     * @param wire the wire that all inner devices run over; absent where each runs over the one it is stated to take
     * @throws SolveCancelledException when the progress says so
     */
    public static List<Influence> of(FitMatrix matrix, Optional<Device> wire, Progress progress) {
        return new Sensitivity(matrix, wire).ranked(matrix, progress);
    }

    private List<Influence> ranked(FitMatrix matrix, Progress progress) {
        Map<Place, Integer> decided = decided(matrix);
        List<Place> places = places();
        List<Influence> found = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            if (progress.isCancelled()) {
                throw new SolveCancelledException();
            }
            Influence influence = influence(places.get(i), decided.getOrDefault(places.get(i), 0));
            if (!influence.isNone()) {
                found.add(influence);
            }
            progress.worked(i + 1, places.size());
        }
        found.sort(BY_WEIGHT);
        return List.copyOf(found);
    }

    private List<Place> places() {
        Set<Place> places = new LinkedHashSet<>(Places.of(devices()));
        wire.ifPresent(w -> places.addAll(Places.ofSections(w)));
        return List.copyOf(places);
    }

    private Set<ReadDevice> devices() {
        Set<ReadDevice> devices = new LinkedHashSet<>();
        question.outer().stream().map(MatrixLine::device).forEach(devices::add);
        devices.addAll(question.inner());
        question.conditions().inside().forEach(o -> devices.add(o.device()));
        question.conditions().through().ifPresent(t -> devices.add(t.extension()));
        return devices;
    }

    private Map<Place, Integer> decided(FitMatrix matrix) {
        Deciding deciding = new Deciding(wire);
        for (int line = 0; line < verdicts.length; line++) {
            for (int column = 0; column < verdicts[line].length; column++) {
                PhaseAnswer answer = matrix.answer(line, column).in(Phase.IN);
                verdicts[line][column] = answer.verdict();
                deciding.count(question.question(line, column), answer);
            }
        }
        return deciding.counts();
    }

    private Influence influence(Place place, int decides) {
        boolean isWire = wire.filter(place.device()::equals).isPresent();
        Variants variants = isWire ? Variants.ofNamedWire((Place.Shaft) place, question)
                : Variants.of(place, question);
        Set<Integer> changed = new LinkedHashSet<>();
        variants.ends().forEach(variant -> changed.addAll(changedCells(variant)));
        OptionalInt settles = variants.centre().map(c -> OptionalInt.of(changedCells(c).size()))
                .orElse(OptionalInt.empty());
        return new Influence(place, decides, changed.size(), settles);
    }

    /** The numbers of the cells whose verdict is another one after a change. */
    private Set<Integer> changedCells(Replacement change) {
        Set<Integer> changed = new LinkedHashSet<>();
        boolean everywhere = change.touches(question.conditions());
        for (int line = 0; line < verdicts.length; line++) {
            boolean wholeLine = everywhere || change.touches(question.outer().get(line).device());
            for (int column = 0; column < verdicts[line].length; column++) {
                boolean touched = wholeLine || change.touches(question.inner().get(column));
                if (touched && verdict(change.in(question.question(line, column))) != verdicts[line][column]) {
                    changed.add(line * verdicts[line].length + column);
                }
            }
        }
        return changed;
    }

    private Verdict verdict(FitQuestion asked) {
        return question.solver().answer(asked).in(Phase.IN).verdict();
    }
}
