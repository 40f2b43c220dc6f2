/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceResolution;
import org.ferrule.model.Document;
import org.ferrule.model.Source;
import org.ferrule.model.Sourced;

/** The source of what a part states, in a few words: its own, else that of what holds it. */
final class SourceWords {

    private SourceWords() {
    }

    static String of(Shown part) {
        return stater(part.stater()).map(SourceWords::words).orElse("");
    }

    /** What names the source that speaks for an object: where it says nothing, the element that holds it does. */
    private static Optional<Sourced> stater(EObject object) {
        if (object == null || object instanceof Document) {
            return Optional.empty();
        }
        if (object instanceof Sourced sourced && sourced.getSource() != null) {
            return Optional.of(sourced);
        }
        Optional<Sourced> around = stater(object.eContainer());
        return object instanceof Device device && around.isEmpty()
                ? DeviceResolution.line(device).flatMap(line -> stater(line)) : around;
    }

    private static String words(Sourced stater) {
        EObject root = stater;
        while (root.eContainer() != null) {
            root = root.eContainer();
        }
        String title = root instanceof Document document ? document.getSources().stream()
                .filter(source -> stater.getSource().equals(source.getId())).map(Source::getTitle)
                .filter(name -> name != null).findFirst().orElse(stater.getSource()) : stater.getSource();
        return stater.getPage() == null ? title : title + ", " + SourceRef.place(stater.getPage());
    }
}
