/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Taper;
import org.ferrule.fit.verdict.Lane;
import org.ferrule.quantity.Length;

/**
 * A part of a device that cannot bend: neighbouring rigid sections together.
 *
 * @param sections from the distal one on, each alone
 * @param outline what of the device's outline lies there, a wire beside it included
 */
record RigidPart(List<Stretch> sections, List<Stretch> outline) {

    /** The rigid parts of a device, from the tip. */
    static List<RigidPart> of(ReadDevice device, Phase phase) {
        List<List<Stretch>> runs = new ArrayList<>();
        Length end = null;
        for (Stretch section : device.rigid(phase)) {
            if (end == null || section.from().compareTo(end) > 0) {
                runs.add(new ArrayList<>());
                end = section.to();
            }
            runs.get(runs.size() - 1).add(section);
            end = end.max(section.to());
        }
        return runs.stream().map(run -> new RigidPart(run, within(run, device.outline(phase)))).toList();
    }

    private static List<Stretch> within(List<Stretch> run, List<Stretch> outline) {
        Length to = end(run);
        return outline.stream().filter(s -> s.to().compareTo(run.get(0).from()) > 0 && s.from().compareTo(to) < 0)
                .toList();
    }

    private static Length end(List<Stretch> run) {
        return run.stream().map(Stretch::to).max(Comparator.naturalOrder()).orElseThrow();
    }

    Length from() {
        return sections.get(0).from();
    }

    Length length() {
        return end(sections).minus(from());
    }

    /** Whether it comes as far as that opening of the lumen, as far as is known how far the device goes. */
    boolean surelyComesTo(Length fromEntry, FitQuestion question) {
        return from().plus(fromEntry).compareTo(question.leastTravel()) < 0;
    }

    /** The largest diameter anywhere along it; absent when one is unknown. */
    Optional<Figure> thickest() {
        return over(outline, Taper::largest, Figure::max);
    }

    /** The section that is thickest, by which the part is called. */
    String name() {
        return sections.stream().max(Comparator.comparing(
                s -> s.diameter().map(t -> t.largest().centre()).orElse(Length.ZERO))).orElseThrow().name();
    }

    /** The first section of which the outline is unknown, with the reasons. */
    Optional<Stretch> unknown() {
        return outline.stream().filter(s -> s.diameter().isEmpty()).findFirst();
    }

    /** A cylinder that surely lies within the part. */
    record Core(Length length, Length diameter, boolean centreAssumed) {
    }

    /** For every run of its round sections the cylinder of the smallest diameter, in that lane. */
    List<Core> cores(Lane lane) {
        List<Core> cores = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            for (int j = i + 1; j <= sections.size(); j++) {
                List<Stretch> run = sections.subList(i, j);
                over(run, Taper::smallest, Figure::min).filter(f -> isWhole(run))
                        .ifPresent(f -> cores.add(core(run, f, lane)));
            }
        }
        return cores;
    }

    /** Whether the sections leave no gap between them, and each is round. */
    private static boolean isWhole(List<Stretch> run) {
        Length covered = run.get(0).from();
        for (Stretch section : run) {
            if (section.from().compareTo(covered) > 0 || !section.proved()) {
                return false;
            }
            covered = covered.max(section.to());
        }
        return true;
    }

    private static Core core(List<Stretch> run, Figure thinnest, Lane lane) {
        return new Core(end(run).minus(run.get(0).from()), lane == Lane.BEST ? thinnest.low() : thinnest.centre(),
                thinnest.centreAssumed());
    }

    private static Optional<Figure> over(List<Stretch> stretches, Function<Taper, Figure> figure,
            BinaryOperator<Figure> both) {
        if (stretches.stream().anyMatch(s -> s.diameter().isEmpty())) {
            return Optional.empty();
        }
        return stretches.stream().map(s -> figure.apply(s.diameter().orElseThrow())).reduce(both);
    }
}
