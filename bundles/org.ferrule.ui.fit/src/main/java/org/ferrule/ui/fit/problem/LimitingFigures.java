/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.problem;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.matrix.FitCell.LimitingPlace;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.Stretch;

/**
 * The figures at the place that limits a cell, going in.
 *
 * @param lumen inner diameter there; empty where that has no centre to assume
 * @param device outer diameter there; empty where that has no centre to assume
 */
record LimitingFigures(Optional<Figure> lumen, Optional<Figure> device) {

    /** Finds them by the names of the sections where these tell enough, and in the whole answer where not. */
    static final class Finder {
        private final FitMatrix matrix;
        private final Map<Integer, Map<String, Set<Figure>>> lumens = new HashMap<>();
        private final Map<Integer, Map<String, Set<Figure>>> devices = new HashMap<>();

        Finder(FitMatrix matrix) {
            this.matrix = matrix;
        }

        LimitingFigures of(int row, int column, LimitingPlace place) {
            Set<Figure> lumen = lumens.computeIfAbsent(row, this::ofLine).getOrDefault(place.lumenSection(), Set.of());
            Set<Figure> device = devices.computeIfAbsent(column, this::ofColumn).getOrDefault(place.deviceSection(),
                    Set.of());
            Supplier<Optional<Limiting>> limiting = () -> matrix.answer(row, column).in().limiting();
            return new LimitingFigures(one(lumen, () -> limiting.get().map(Limiting::lumenDiameter)),
                    one(device, () -> limiting.get().map(Limiting::deviceDiameter)));
        }

        private Map<String, Set<Figure>> ofLine(int row) {
            MatrixLine line = matrix.question().outer().get(row);
            return byName(line.device().bore(line.lumen()));
        }

        private Map<String, Set<Figure>> ofColumn(int column) {
            return byName(matrix.question().inner().get(column).outline(Phase.IN));
        }

        /** Only names of sections with assumed figures, which are few: this is asked for every cell. */
        private static Map<String, Set<Figure>> byName(List<Stretch> stretches) {
            Map<String, Set<Figure>> byName = stretches.stream()
                    .collect(Collectors.groupingBy(Stretch::name, Collectors.flatMapping(stretch -> stretch.diameter()
                            .stream().flatMap(taper -> Stream.of(taper.start(), taper.end())), Collectors.toSet())));
            byName.values().removeIf(figures -> figures.stream().noneMatch(Figure::centreAssumed));
            return byName;
        }

        private static Optional<Figure> one(Set<Figure> figures, Supplier<Optional<Figure>> ofAnswer) {
            if (figures.isEmpty()) {
                return Optional.empty();
            }
            return figures.size() == 1 ? Optional.of(figures.iterator().next()) : ofAnswer.get();
        }
    }
}
