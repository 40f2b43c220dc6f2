/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Comparator;
import java.util.Optional;

import org.ferrule.model.Lumen;
import org.ferrule.model.LumenOpening;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.model.ShaftSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Proximal to the collar of an extension lies its push rod, and nothing as thick as its lumen is wide. */
final class CollarCheck implements DeviceCheck {

    @Override
    public void check(ResolvedDevice resolved, Examination examination) {
        resolved.device().getLumens().stream().filter(lumen -> lumen.getOpens() == LumenOpening.COLLAR)
                .forEach(lumen -> check(resolved, lumen, examination));
    }

    private static void check(ResolvedDevice resolved, Lumen lumen, Examination examination) {
        Optional<Length> collar = Lengths.of(lumen.getProximalAt());
        Optional<Length> widest = lumen.getSections().stream().flatMap(s -> Lengths.of(s.getId()).stream())
                .max(Comparator.naturalOrder());
        if (collar.isPresent() && widest.isPresent()) {
            for (ShaftSection section : resolved.device().getSections()) {
                if (isAtLeast(section.getFrom(), collar.get()) && isAtLeast(section.getOd(), widest.get())) {
                    examination.add(ProblemCode.PLUG_BEHIND_COLLAR,
                            resolved.statedBy(section, Literals.SHAFT_SECTION__FROM), Literals.SHAFT_SECTION__FROM,
                            section.getFrom().text(), lumen.getProximalAt().text(), section.getOd().text());
                }
            }
        }
    }

    private static boolean isAtLeast(Dimension figure, Length least) {
        return Lengths.of(figure).filter(length -> length.compareTo(least) >= 0).isPresent();
    }
}
