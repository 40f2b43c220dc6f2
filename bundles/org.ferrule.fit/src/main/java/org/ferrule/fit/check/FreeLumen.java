/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Taper;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.geometry.Enclosure;
import org.ferrule.quantity.Length;

/**
 * What a lumen leaves for a device wherever in it a bend may lie: that of an extension in place, else of the outer
 * device.
 *
 * @param narrowest its smallest diameter less the circle round what lies in it; absent when a figure is unknown
 * @param widest its largest diameter, as if nothing lay in it; absent when a figure is unknown
 * @param why the reasons why a figure is unknown
 */
record FreeLumen(Optional<Figure> narrowest, Optional<Figure> widest, List<Reason> why) {

    /** What it leaves; a device that was not used before has its outline before or after use, as the phase is. */
    static FreeLumen of(FitQuestion question, Phase phase) {
        List<Stretch> bore = question.conditions().through().map(t -> t.extension().bore(t.lumen()))
                .orElseGet(() -> question.outer().bore(question.lumen()));
        List<Stretch> unknown = bore.stream().filter(s -> s.diameter().isEmpty()).toList();
        if (!unknown.isEmpty()) {
            return new FreeLumen(Optional.empty(), Optional.empty(), unknown.get(0).notes());
        }
        Figure narrowest = bore.stream().map(s -> s.diameter().orElseThrow().smallest()).reduce(Figure::min)
                .orElseThrow();
        Optional<Figure> widest = bore.stream().map(s -> s.diameter().orElseThrow().largest()).reduce(Figure::max);
        return less(narrowest, widest, question, phase);
    }

    private static FreeLumen less(Figure narrowest, Optional<Figure> widest, FitQuestion question, Phase phase) {
        List<Figure> taken = new ArrayList<>();
        for (Occupant occupant : question.conditions().inside()) {
            List<Stretch> inside = inside(occupant, question, phase);
            Optional<Stretch> unknown = inside.stream().filter(s -> s.diameter().isEmpty()).findFirst();
            if (unknown.isPresent()) {
                return new FreeLumen(Optional.empty(), widest, unknown.get().notes());
            }
            inside.stream().map(s -> s.diameter().orElseThrow()).map(Taper::largest).reduce(Figure::max)
                    .ifPresent(taken::add);
        }
        return new FreeLumen(Optional.of(taken.isEmpty() ? narrowest : rest(narrowest, taken)), widest, List.of());
    }

    /** The stretches of an occupant that lie in the lumen, at least in part. */
    private static List<Stretch> inside(Occupant occupant, FitQuestion question, Phase phase) {
        Lumen lumen = question.conditions().through().map(t -> t.lumen()).orElse(question.lumen());
        Length opening = question.conditions().through().map(t -> t.protrusion()).orElse(Length.ZERO);
        Length distal = occupant.tipAhead().minus(opening);
        Length proximal = distal.plus(lumen.length());
        return occupant.device().outline(occupant.used() ? Phase.OUT : phase).stream()
                .filter(s -> s.to().compareTo(distal) > 0 && s.from().compareTo(proximal) < 0).toList();
    }

    private static Figure rest(Figure lumen, List<Figure> taken) {
        Length best = lumen.high().minus(enclosing(taken, Figure::low).lowerDiameter());
        Length nominal = lumen.centre().minus(enclosing(taken, Figure::centre).upperDiameter());
        Length worst = lumen.low().minus(enclosing(taken, Figure::high).upperDiameter());
        boolean assumed = lumen.centreAssumed() || taken.stream().anyMatch(Figure::centreAssumed);
        // The bounds of two lanes may differ by rounding alone.
        Length centre = nominal.min(best).max(Length.ZERO);
        return new Figure(worst.min(centre).max(Length.ZERO), centre, best.max(Length.ZERO), assumed);
    }

    private static Enclosure enclosing(List<Figure> taken, Function<Figure, Length> lane) {
        return EnclosingCircle.discs(taken.stream().map(lane).toList());
    }
}
