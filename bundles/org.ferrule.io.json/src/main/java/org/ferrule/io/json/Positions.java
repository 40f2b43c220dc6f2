/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.io.json.JsonNode.ArrayNode;
import org.ferrule.io.json.JsonNode.Member;
import org.ferrule.io.json.JsonNode.ObjectNode;
import org.ferrule.io.json.JsonNode.StringNode;

/**
 * Where the objects of a document, their keys and their values stand in the text that was read. Objects that were not
 * read, such as later additions, have no place of their own.
 */
public final class Positions {

    private final SourceText text;
    private final Map<EObject, JsonNode> objects = new IdentityHashMap<>();
    private final Map<EObject, Map<EStructuralFeature, Member>> members = new IdentityHashMap<>();

    Positions(SourceText text) {
        this.text = text;
    }

    void put(EObject object, JsonNode node) {
        objects.put(object, node);
    }

    void put(EObject object, EStructuralFeature feature, Member member) {
        members.computeIfAbsent(object, o -> new HashMap<>()).put(feature, member);
    }

    /** Returns where the object stands, from brace to brace; an unknown key stands at its value. */
    public Optional<TextRegion> object(EObject object) {
        return Optional.ofNullable(objects.get(object)).map(text::region);
    }

    /** Returns where the key of the feature stands in the object, quotes included. */
    public Optional<TextRegion> key(EObject object, EStructuralFeature feature) {
        return member(object, feature).map(member -> text.region(member.keyStart(), member.keyEnd()));
    }

    /** Returns where the whole value of the feature stands in the object. */
    public Optional<TextRegion> value(EObject object, EStructuralFeature feature) {
        return member(object, feature).map(member -> text.region(member.value()));
    }

    /** Returns where one value of a feature with many values stands. */
    public Optional<TextRegion> value(EObject object, EStructuralFeature feature, int index) {
        return member(object, feature).map(Member::value)
                .filter(node -> node instanceof ArrayNode array && index < array.values().size())
                .map(node -> text.region(((ArrayNode) node).values().get(index)));
    }

    /**
     * Returns where a part of a text value stands.
     *
     * @param start the index in the value where the part begins
     * @param end the index where it ends; a part of no length is a place
     */
    public Optional<TextRegion> within(EObject object, EStructuralFeature feature, int start, int end) {
        return member(object, feature).map(Member::value).filter(StringNode.class::isInstance)
                .map(node -> text.region(Escapes.offset(text.text(), node, start),
                        Escapes.offset(text.text(), node, end)));
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

    private TextRegion word(Member member) {
        boolean large = member.value() instanceof ArrayNode || member.value() instanceof ObjectNode;
        return large ? text.region(member.keyStart(), member.keyEnd()) : text.region(member.value());
    }

    private Optional<Member> member(EObject object, EStructuralFeature feature) {
        return Optional.ofNullable(members.get(object)).map(map -> map.get(feature));
    }

    private static TextRegion beginning(TextRegion region) {
        return new TextRegion(region.line(), region.column(), region.offset(), Math.min(1, region.length()));
    }
}
