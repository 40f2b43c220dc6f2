/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The kinds of document, each with its own format name and its own ending of the file name. */
public enum DocumentKind {

    /** A library of devices. */
    DEVICES(ModelPackage.Literals.DEVICE_LIBRARY),
    /** A set of rules. */
    RULES(ModelPackage.Literals.RULE_SET),
    /** A fit chart. */
    CHART(ModelPackage.Literals.FIT_CHART),
    /** The techniques for one situation. */
    TECHNIQUES(ModelPackage.Literals.TECHNIQUE_LIBRARY),
    /** A case. */
    CASE(ModelPackage.Literals.CASE_DOCUMENT),
    /** What the laboratory has. */
    SHELF(ModelPackage.Literals.SHELF_DOCUMENT);

    /** The version of every format that this program writes, and the newest that it can change. */
    public static final int VERSION = 1;

    private final EClass type;

    DocumentKind(EClass type) {
        this.type = type;
    }

    /** Returns the class of the document. */
    public EClass type() {
        return type;
    }

    /** Returns the name that stands in the document, such as {@code ferrule.devices}. */
    public String format() {
        return Features.annotation(type, "format").orElseThrow();
    }

    /** Returns the ending of the file name, such as {@code .devices.json}. */
    public String suffix() {
        return Features.annotation(type, "suffix").orElseThrow();
    }

    /** Creates an empty document with its format and version. */
    public Document create() {
        Document document = (Document) EcoreUtil.create(type);
        document.setFormat(format());
        document.setVersion(VERSION);
        return document;
    }

    /** Returns the kind that a file name ends for, or nothing. */
    public static Optional<DocumentKind> ofFileName(String fileName) {
        return Stream.of(values()).filter(kind -> fileName.endsWith(kind.suffix())).findFirst();
    }

    /** Returns the kind with this format name, or nothing. */
    public static Optional<DocumentKind> ofFormat(String format) {
        return Stream.of(values()).filter(kind -> kind.format().equals(format)).findFirst();
    }

    /** Returns the kind of a document. */
    public static DocumentKind of(EObject document) {
        return Stream.of(values()).filter(kind -> kind.type == document.eClass()).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(document.eClass().getName() + " is not a document"));
    }
}
