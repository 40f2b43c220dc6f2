/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.io.json.JsonNode.ArrayNode;
import org.ferrule.io.json.ObjectPlace.MemberPlace;

import com.fasterxml.jackson.core.JsonProcessingException;

/**
 * Where the objects of a document, their keys and their values stand in the text that was read. Objects that were not
 * read, such as later additions, have no place of their own.
 */
public final class Positions {

    /** Nothing has a place. */
    static final Positions NONE = new Positions(new SourceText(""));

    private final SourceText text;
    private final Map<EObject, ObjectPlace> places = new IdentityHashMap<>();

    Positions(SourceText text) {
        this.text = text;
    }

    void put(EObject object, ObjectPlace place) {
        places.put(object, place);
    }

    /** Returns where the object stands, from brace to brace; an unknown key stands at its value. */
    public Optional<TextRegion> object(EObject object) {
        return Optional.ofNullable(places.get(object)).map(place -> text.region(place.start(), place.end()));
    }

    /** Returns where the key of the feature stands in the object, quotes included. */
    public Optional<TextRegion> key(EObject object, EStructuralFeature feature) {
        return member(object, feature).map(this::key);
    }

    /** Returns where the whole value of the feature stands in the object. */
    public Optional<TextRegion> value(EObject object, EStructuralFeature feature) {
        return member(object, feature).map(this::value);
    }

    /** Returns where one value of a feature with many values stands. */
    public Optional<TextRegion> value(EObject object, EStructuralFeature feature, int index) {
        return member(object, feature).filter(member -> startsWith(member, '['))
                .flatMap(member -> inArray(member, index));
    }

    /** The array is read again: places are asked for rarely, and all values of all arrays would need much room. */
    private Optional<TextRegion> inArray(MemberPlace member, int index) {
        List<JsonNode> values = ((ArrayNode) readAgain(member)).values();
        return index >= values.size() ? Optional.empty()
                : Optional.of(text.region(member.valueStart() + values.get(index).start(),
                        member.valueStart() + values.get(index).end()));
    }

    private JsonNode readAgain(MemberPlace member) {
        try {
            return TreeReader.read(text.text().substring(member.valueStart(), member.valueEnd()));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("what was read cannot be read again", e);
        }
    }

    /**
     * Returns where a part of a text value stands.
     *
     * @param start the index in the value where the part begins
     * @param end the index where it ends; a part of no length is a place
     */
    public Optional<TextRegion> within(EObject object, EStructuralFeature feature, int start, int end) {
        return member(object, feature).filter(member -> startsWith(member, '"'))
                .map(member -> text.region(offset(member, start), offset(member, end)));
    }

    private int offset(MemberPlace member, int index) {
        return Escapes.offset(text.text(), member.valueStart(), member.valueEnd(), index);
    }

    /**
     * Returns the closest place there is to show a problem at, never more than a word or a line: the value of a
     * feature, or its key if the value is an object or an array; else the beginning of the object, else what holds it,
     * else the beginning of the document.
     *
     * @param feature the feature, or null for the object itself
     */
    public TextRegion closest(EObject object, EStructuralFeature feature) {
        Optional<TextRegion> place = member(object, feature).map(this::word)
                .or(() -> object(object).map(Positions::beginning));
        if (place.isPresent()) {
            return place.get();
        }
        return object.eContainer() == null ? text.region(0, 0)
                : closest(object.eContainer(), object.eContainingFeature());
    }

    private TextRegion word(MemberPlace member) {
        return startsWith(member, '[') || startsWith(member, '{') ? key(member) : value(member);
    }

    private TextRegion key(MemberPlace member) {
        return text.region(member.keyStart(), SourceText.endOfString(text.text(), member.keyStart()));
    }

    private TextRegion value(MemberPlace member) {
        return text.region(member.valueStart(), member.valueEnd());
    }

    private boolean startsWith(MemberPlace member, char first) {
        return text.text().charAt(member.valueStart()) == first;
    }

    private Optional<MemberPlace> member(EObject object, EStructuralFeature feature) {
        ObjectPlace place = places.get(object);
        return place == null || feature == null ? Optional.empty()
                : place.member(object.eClass().getFeatureID(feature));
    }

    private static TextRegion beginning(TextRegion region) {
        return new TextRegion(region.line(), region.column(), region.offset(), Math.min(1, region.length()));
    }
}
