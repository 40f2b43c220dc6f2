/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes indented XML, one element to a line, and reports a failing stream by the failure itself. */
final class XmlOutput {

    private static final String INDENT = "  ";

    private final XMLStreamWriter writer;
    private int depth;

    @FunctionalInterface
    private interface Step {
        void run() throws XMLStreamException;
    }

    /** Begins a document in UTF-8. */
    XmlOutput(OutputStream out) throws IOException {
        // the factory of the JDK, whatever else is installed: another one might write other bytes
        XMLOutputFactory factory = XMLOutputFactory.newDefaultFactory();
        try {
            writer = factory.createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
        } catch (XMLStreamException e) {
            throw failure(e);
        }
        write(() -> writer.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0"));
    }

    /** Begins an element that will hold others. */
    void begin(String name, Attributes attributes) throws IOException {
        write(() -> {
            startLine();
            writer.writeStartElement(name);
            writeAttributes(attributes);
        });
        depth++;
    }

    /** Ends the element that was begun last. */
    void end() throws IOException {
        depth--;
        write(() -> {
            startLine();
            writer.writeEndElement();
        });
    }

    /** Writes an element that holds nothing. */
    void element(String name, Attributes attributes) throws IOException {
        write(() -> {
            startLine();
            writer.writeEmptyElement(name);
            writeAttributes(attributes);
        });
    }

    /** Writes an element that holds text. */
    void textElement(String name, Attributes attributes, String text) throws IOException {
        write(() -> {
            startLine();
            writer.writeStartElement(name);
            writeAttributes(attributes);
            writer.writeCharacters(text);
            writer.writeEndElement();
        });
    }

    /** Ends the document and leaves the stream open. */
    void endDocument() throws IOException {
        write(() -> {
            writer.writeEndDocument();
            writer.writeCharacters("\n");
            writer.flush();
        });
    }

    private void startLine() throws XMLStreamException {
        writer.writeCharacters("\n" + INDENT.repeat(depth));
    }

    private void writeAttributes(Attributes attributes) throws XMLStreamException {
        for (Map.Entry<String, String> attribute : attributes.values().entrySet()) {
            writer.writeAttribute(attribute.getKey(), attribute.getValue());
        }
    }

    private static void write(Step step) throws IOException {
        try {
            step.run();
        } catch (XMLStreamException e) {
            throw failure(e);
        }
    }

    private static IOException failure(XMLStreamException e) {
        return e.getNestedException() instanceof IOException cause ? cause : new IOException(e.getMessage(), e);
    }
}
