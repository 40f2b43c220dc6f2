/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Copies the lumens of one device. */
final class LumenTranslator {
    private final Length wholeLength;
    private final SourceIndex sources;

    LumenTranslator(Length wholeLength, SourceIndex sources) {
        this.wholeLength = wholeLength;
        this.sources = sources;
    }

    List<Lumen> translate(List<org.ferrule.model.Lumen> lumens) {
        return lumens.stream().filter(this::isInOrder).map(this::lumen).toList();
    }

    private boolean isInOrder(org.ferrule.model.Lumen lumen) {
        return distalAt(lumen).compareTo(proximalAt(lumen)) <= 0;
    }

    private static Length distalAt(org.ferrule.model.Lumen lumen) {
        return Stations.of(lumen.getDistalAt()).orElse(Length.ZERO);
    }

    private Length proximalAt(org.ferrule.model.Lumen lumen) {
        return Stations.of(lumen.getProximalAt()).orElse(wholeLength);
    }

    private Lumen lumen(org.ferrule.model.Lumen lumen) {
        Length length = proximalAt(lumen).minus(distalAt(lumen));
        boolean only = lumen.getSections().size() == 1;
        List<LumenSection> sections = lumen.getSections().stream().filter(s -> only || hasStations(s))
                .map(s -> section(s, length)).toList();
        return new Lumen(DeviceTranslator.text(lumen.getName()), Words.use(lumen.getUse()),
                Words.opening(lumen.getOpens()), distalAt(lumen), proximalAt(lumen),
                Stations.of(lumen.getProximalAt()).isPresent(), sections);
    }

    private static boolean hasStations(org.ferrule.model.LumenSection section) {
        Optional<Length> from = Stations.of(section.getFrom());
        Optional<Length> to = Stations.of(section.getTo());
        return from.isPresent() && to.isPresent() && from.get().compareTo(to.get()) <= 0;
    }

    private LumenSection section(org.ferrule.model.LumenSection section, Length whole) {
        Optional<Dimension> proximal = Optional.ofNullable(section.getId());
        Optional<Dimension> distal = Optional.ofNullable(section.getIdDistal()).or(() -> proximal);
        return new LumenSection(DeviceTranslator.text(section.getName()),
                Stations.of(section.getFrom()).orElse(Length.ZERO), Stations.of(section.getTo()).orElse(whole),
                proximal, distal, sources.of(section));
    }
}
