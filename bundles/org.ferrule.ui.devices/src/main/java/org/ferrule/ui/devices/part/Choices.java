/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShaftSection;

/** What an attribute may name that names something of its own document. */
final class Choices {

    private Choices() {
    }

    /** Returns what the attribute may name, for an object that has it; null if it names nothing of its document. */
    static Function<EObject, Map<String, String>> of(EAttribute attribute) {
        Optional<String> type = Features.annotation(attribute, "refers");
        if (type.filter(Literals.DEVICE_LINE.getName()::equals).isPresent()) {
            return Choices::lines;
        }
        return type.filter(Literals.SHAFT_SECTION.getName()::equals).isPresent() ? Choices::sections : null;
    }

    private static Map<String, String> lines(EObject device) {
        Map<String, String> lines = new LinkedHashMap<>();
        if (device.eContainer() instanceof DeviceLibrary library) {
            library.getLines().stream().filter(line -> line.getId() != null)
                    .forEach(line -> lines.put(line.getId(), title(line)));
        }
        return lines;
    }

    private static String title(DeviceLine line) {
        return line.getName() == null ? line.getId() : line.getId() + "  \u2013  " + line.getName();
    }

    private static Map<String, String> sections(EObject part) {
        Map<String, String> sections = new LinkedHashMap<>();
        if (part.eContainer() instanceof DeviceParts device) {
            complete(device).stream().map(ShaftSection::getName).filter(name -> name != null)
                    .forEach(name -> sections.put(name, name));
        }
        return sections;
    }

    private static List<ShaftSection> complete(DeviceParts device) {
        return ((DeviceParts) Shown.of(device).complete()).getSections();
    }
}
