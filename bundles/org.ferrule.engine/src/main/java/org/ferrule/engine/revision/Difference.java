/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.revision;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;

/**
 * One thing that two revisions say differently.
 *
 * @param kind whether a value has changed, or a part came or went
 * @param entry what it is about: a device, a line, a bench result or a source, of the later revision if it is there,
 *            else of the earlier; the later document for what concerns the document as a whole
 * @param before what has the feature in the earlier revision
 * @param after what has it in the later one
 * @param feature the attribute whose value has changed, or the reference that holds the part
 * @param part the part that came or went; empty for a value
 */
public record Difference(Kind kind, EObject entry, EObject before, EObject after, EStructuralFeature feature,
        Optional<EObject> part) {

    /** What has happened. */
    public enum Kind {
        /** The later revision has a part that the earlier has not. */
        ADDED,
        /** The earlier revision has a part that the later has not. */
        REMOVED,
        /** Both state a value, or only one does, and not the same. */
        CHANGED
    }

    /** Checks that there is a part where one came or went. */
    public Difference {
        Objects.requireNonNull(entry, "entry");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        if (part.isPresent() == (kind == Kind.CHANGED)) {
            throw new IllegalArgumentException(kind + " of " + feature.getName() + " with part " + part);
        }
    }

    /** Returns the value before; empty if none was stated, or for a part. */
    public Optional<Object> valueBefore() {
        return value(before);
    }

    /** Returns the value after; empty if none is stated, or for a part. */
    public Optional<Object> valueAfter() {
        return value(after);
    }

    private Optional<Object> value(EObject object) {
        return kind == Kind.CHANGED && object.eIsSet(feature) ? Optional.of(object.eGet(feature)) : Optional.empty();
    }

    /** Returns by how much a figure has grown, zero if only its text differs; empty where two cannot be read. */
    public Optional<Length> growth() {
        Optional<Length> from = valueBefore().flatMap(Difference::length);
        return valueAfter().flatMap(Difference::length).flatMap(to -> from.map(to::minus));
    }

    private static Optional<Length> length(Object value) {
        if (value instanceof Dimension dimension) {
            return Optional.of(dimension).filter(Dimension::readable).map(Dimension::label);
        }
        return value instanceof Offset offset && offset.readable() ? Optional.of(offset.value()) : Optional.empty();
    }

    /** Tells whether a figure says something else of the part than before: a minimum, say, and no longer a maximum. */
    public boolean changesMeaning() {
        return valueBefore().orElse(null) instanceof Dimension was && was.readable()
                && valueAfter().orElse(null) instanceof Dimension is && is.readable()
                && was.meaning() != is.meaning();
    }
}
