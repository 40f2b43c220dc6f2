/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.ui.IMemento;

/**
 * What else holds in the daily question, as it is filled in. Texts are empty where nothing is said.
 *
 * @param beside what lies in the lumen already
 * @param extension reference of the guide extension that is passed
 * @param protrusion how far its tip lies beyond the outer tip, as typed
 * @param bend the bend on the way, if there is one
 * @param afterInflation whether the device goes in again after use
 */
public record PassageConditions(List<Beside> beside, String extension, String protrusion, Optional<Bent> bend,
        boolean afterInflation) {

    /** The device passes alone, straight and unused. */
    public static final PassageConditions NONE = new PassageConditions(List.of(), "", "", Optional.empty(), false);

    private static final String BESIDE = "beside";
    private static final String BEND = "bend";

    /**
     * A device that lies in the lumen already.
     *
     * @param device its reference
     * @param tipAhead how far its tip lies beyond the outer tip, as typed
     * @param used whether it has its outline after use
     */
    public record Beside(String device, String tipAhead, boolean used) {

        /** Checks that nothing is missing. */
        public Beside {
            Objects.requireNonNull(device, "device");
            Objects.requireNonNull(tipAhead, "tipAhead");
        }
    }

    /**
     * A bend on the way.
     *
     * @param vessel whether a vessel is bent, and not the lumen
     * @param radius as typed
     * @param degrees as typed
     * @param width diameter of the vessel, as typed
     */
    public record Bent(boolean vessel, String radius, String degrees, String width) {

        /** Checks that nothing is missing. */
        public Bent {
            Objects.requireNonNull(radius, "radius");
            Objects.requireNonNull(degrees, "degrees");
            Objects.requireNonNull(width, "width");
        }
    }

    /** Checks that nothing is missing. */
    public PassageConditions {
        beside = List.copyOf(beside);
        Objects.requireNonNull(extension, "extension");
        Objects.requireNonNull(protrusion, "protrusion");
        Objects.requireNonNull(bend, "bend");
    }

    /** Returns how many conditions there are. */
    int count() {
        return beside.size() + (extension.isEmpty() ? 0 : 1) + bend.map(b -> 1).orElse(0) + (afterInflation ? 1 : 0);
    }

    void save(IMemento memento) {
        for (Beside each : beside) {
            IMemento child = memento.createChild(BESIDE);
            child.putString("device", each.device());
            child.putString("tipAhead", each.tipAhead());
            child.putBoolean("used", each.used());
        }
        memento.putString("extension", extension);
        memento.putString("protrusion", protrusion);
        bend.ifPresent(b -> {
            IMemento child = memento.createChild(BEND);
            child.putBoolean("vessel", b.vessel());
            child.putString("radius", b.radius());
            child.putString("degrees", b.degrees());
            child.putString("width", b.width());
        });
        memento.putBoolean("afterInflation", afterInflation);
    }

    static PassageConditions restore(IMemento memento) {
        List<Beside> beside = Stream.of(memento.getChildren(BESIDE))
                .map(c -> new Beside(text(c, "device"), text(c, "tipAhead"), flag(c, "used"))).toList();
        Optional<Bent> bend = Stream.of(memento.getChildren(BEND)).findFirst()
                .map(c -> new Bent(flag(c, "vessel"), text(c, "radius"), text(c, "degrees"), text(c, "width")));
        return new PassageConditions(beside, text(memento, "extension"), text(memento, "protrusion"), bend,
                flag(memento, "afterInflation"));
    }

    private static String text(IMemento memento, String key) {
        return Optional.ofNullable(memento.getString(key)).orElse("");
    }

    private static boolean flag(IMemento memento, String key) {
        return Boolean.TRUE.equals(memento.getBoolean(key));
    }
}
