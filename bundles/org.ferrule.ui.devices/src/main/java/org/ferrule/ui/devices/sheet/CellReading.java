/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.Features;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Offset;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.QuantitySyntaxException;
import org.ferrule.quantity.QuantityWarning;

/**
 * What came of reading a text as the value of an attribute.
 *
 * @param value the value, its text as it was typed; null if the text is empty or cannot be read
 * @param error why it cannot be read; nothing if it can
 * @param doubt what is implausible about it, if anything
 */
public record CellReading(Object value, Optional<String> error, Optional<String> doubt) {

    private static final CellReading EMPTY = new CellReading(null, Optional.empty(), Optional.empty());

    /** Reads a text; an empty one states nothing. */
    public static CellReading of(EAttribute feature, String typed) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return feature.isRequired() ? wrong("this must not be empty") : EMPTY;
        }
        EDataType type = feature.getEAttributeType();
        return Features.isFigure(feature) ? figure(feature, text)
                : type instanceof EEnum words ? word(words, text) : plain(type, text);
    }

    private static CellReading wrong(String message) {
        return new CellReading(null, Optional.of(message), Optional.empty());
    }

    private static CellReading right(Object value) {
        return new CellReading(value, Optional.empty(), Optional.empty());
    }

    private static CellReading figure(EAttribute feature, String text) {
        try {
            Class<?> type = feature.getEAttributeType().getInstanceClass();
            if (type == Pressure.class) {
                Pressure pressure = Pressure.parse(text);
                return new CellReading(pressure, Optional.empty(), first(pressure.warnings()));
            }
            return type == Offset.class ? right(Offset.parse(text)) : dimension(feature, Dimension.parse(text));
        } catch (QuantitySyntaxException e) {
            int place = Math.min(e.position(), text.length());
            return wrong("expected " + e.expected()
                    + (place < text.length() ? " at \"" + text.substring(place) + "\"" : " at the end"));
        }
    }

    private static CellReading dimension(EAttribute feature, Dimension dimension) {
        return new CellReading(dimension, Optional.empty(),
                first(Features.figureKind(feature).map(dimension::warnings).orElse(List.of())));
    }

    private static Optional<String> first(List<QuantityWarning> warnings) {
        return warnings.stream().findFirst().map(QuantityWarning::message);
    }

    private static CellReading word(EEnum words, String text) {
        Optional<Enumerator> found = words.getELiterals().stream().map(EEnumLiteral::getInstance)
                .filter(word -> word.getLiteral().equalsIgnoreCase(text)).findFirst();
        return found.map(CellReading::right).orElseGet(() -> wrong("expected one of: " + words.getELiterals().stream()
                .map(EEnumLiteral::getLiteral).collect(Collectors.joining(", "))));
    }

    private static CellReading plain(EDataType type, String text) {
        if (type.getInstanceClass() == boolean.class
                && Arrays.asList("true", "false").stream().noneMatch(text::equals)) {
            return wrong("expected true or false");
        }
        try {
            return right(EcoreUtil.createFromString(type, text));
        } catch (IllegalArgumentException e) {
            return wrong("expected a number, with a decimal point");
        }
    }

    /** Tells whether the text may become part of the document. */
    public boolean readable() {
        return error.isEmpty();
    }
}
