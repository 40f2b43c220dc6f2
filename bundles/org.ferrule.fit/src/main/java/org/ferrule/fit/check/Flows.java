/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.ferrule.fit.passage.Filling;
import org.ferrule.flow.LumenFlow;
import org.ferrule.flow.OpenFraction;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.quantity.Length;

/**
 * The flow that fillings of lumens leave, each solved once. What is remembered never changes an answer. Safe to use
 * from many threads; forgets everything when it has become too much.
 */
final class Flows {
    private static final int MOST = 10_000;

    private final Map<Key, Optional<OpenFraction>> solved = new ConcurrentHashMap<>();

    private record Key(Length lumen, List<Length> devices) {
    }

    /** Over all positions of the devices; absent where they do not lie in the lumen together, or are too many. */
    Optional<OpenFraction> of(Filling filling) {
        return of(new Key(filling.lumen(), filling.devices()));
    }

    /**
     * What the thickest device leaves alone, of which the upper end is proved for all of them; absent where they do not
     * lie in the lumen together.
     */
    Optional<OpenFraction> ofThickest(Filling filling) {
        List<Length> thickest = filling.devices().subList(0, Math.min(1, filling.devices().size()));
        return lieTogether(filling.lumen(), filling.devices()) ? of(new Key(filling.lumen(), thickest))
                : Optional.empty();
    }

    private Optional<OpenFraction> of(Key key) {
        Optional<OpenFraction> known = solved.get(key);
        if (known != null) {
            return known;
        }
        Optional<OpenFraction> found = key.devices().size() <= LumenFlow.MOST_DEVICES
                && lieTogether(key.lumen(), key.devices())
                        ? Optional.of(LumenFlow.interval(key.lumen(), key.devices()))
                        : Optional.empty();
        if (solved.size() >= MOST) {
            solved.clear();
        }
        solved.put(key, found);
        return found;
    }

    private static boolean lieTogether(Length lumen, List<Length> devices) {
        return lumen.compareTo(Length.ZERO) > 0
                && EnclosingCircle.discs(devices).upperDiameter().compareTo(lumen) <= 0;
    }
}
