/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.state;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.escalation.technique.Slot;
import org.ferrule.quantity.Length;

/**
 * What is in place, as ids of devices.
 *
 * @param sheath absent when there is none, or nobody says
 * @param valve absent when nobody says
 * @param guide the guide catheter
 * @param extension a guide extension in it
 * @param microcatheter over the main wire
 * @param mainWire across the lesion
 * @param secondWire beside it
 * @param anchor a balloon that anchors, over the second wire
 */
public record SystemState(Optional<String> sheath, Optional<String> valve, String guide,
        Optional<PlacedExtension> extension, Optional<String> microcatheter, Optional<String> mainWire,
        Optional<String> secondWire, Optional<String> anchor) {

    /**
     * A guide extension in the guide.
     *
     * @param device its id
     * @param protrusion how far its tip lies beyond the guide's
     */
    public record PlacedExtension(String device, Length protrusion) {
        public PlacedExtension {
            Objects.requireNonNull(device, "device");
            Objects.requireNonNull(protrusion, "protrusion");
        }
    }

    public SystemState {
        Objects.requireNonNull(sheath, "sheath");
        Objects.requireNonNull(valve, "valve");
        Objects.requireNonNull(guide, "guide");
        Objects.requireNonNull(extension, "extension");
        Objects.requireNonNull(microcatheter, "microcatheter");
        Objects.requireNonNull(mainWire, "mainWire");
        Objects.requireNonNull(secondWire, "secondWire");
        Objects.requireNonNull(anchor, "anchor");
    }

    /** With that guide in place of the former one. */
    public SystemState withGuide(String device) {
        return new SystemState(sheath, valve, device, extension, microcatheter, mainWire, secondWire, anchor);
    }

    /** With that extension. */
    public SystemState withExtension(PlacedExtension placed) {
        return new SystemState(sheath, valve, guide, Optional.of(placed), microcatheter, mainWire, secondWire, anchor);
    }

    /** With that microcatheter. */
    public SystemState withMicrocatheter(String device) {
        return new SystemState(sheath, valve, guide, extension, Optional.of(device), mainWire, secondWire, anchor);
    }

    /** With that wire across the lesion; what was over the former one is out. */
    public SystemState withMainWire(String device) {
        return new SystemState(sheath, valve, guide, extension, Optional.empty(), Optional.of(device), secondWire,
                anchor);
    }

    /** With that wire beside the main one. */
    public SystemState withSecondWire(String device) {
        return new SystemState(sheath, valve, guide, extension, microcatheter, mainWire, Optional.of(device), anchor);
    }

    /** With that balloon as an anchor. */
    public SystemState withAnchor(String device) {
        return new SystemState(sheath, valve, guide, extension, microcatheter, mainWire, secondWire,
                Optional.of(device));
    }

    /** Without what is in that slot; empty when nothing is there, or it cannot be taken out by itself. */
    public Optional<SystemState> without(Slot slot) {
        return switch (slot) {
            case EXTENSION -> extension.map(e -> new SystemState(sheath, valve, guide, Optional.empty(),
                    microcatheter, mainWire, secondWire, anchor));
            case MICROCATHETER -> microcatheter.map(m -> new SystemState(sheath, valve, guide, extension,
                    Optional.empty(), mainWire, secondWire, anchor));
            case ANCHOR -> anchor.map(a -> new SystemState(sheath, valve, guide, extension, microcatheter, mainWire,
                    secondWire, Optional.empty()));
            case SECOND_WIRE -> secondWire.map(w -> new SystemState(sheath, valve, guide, extension, microcatheter,
                    mainWire, Optional.empty(), Optional.empty()));
            case GUIDE, MAIN_WIRE -> Optional.empty();
        };
    }

    /** Ids of all that is in place, outermost first. */
    public List<String> devices() {
        return Stream.of(sheath, valve, Optional.of(guide), extension.map(PlacedExtension::device),
                microcatheter, anchor, secondWire, mainWire).flatMap(Optional::stream).toList();
    }
}
