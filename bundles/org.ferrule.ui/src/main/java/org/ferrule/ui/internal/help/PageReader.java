/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.help;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.ferrule.ui.internal.help.RichText.Kind;
import org.ferrule.ui.internal.help.RichText.Paragraph;
import org.ferrule.ui.internal.help.RichText.Run;
import org.ferrule.ui.internal.help.RichText.Style;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Reads the XHTML of a help page: headings, paragraphs, lists, emphasis, code, links and pictures. */
final class PageReader {

    /** Between the cells of a row. */
    private static final String GAP = "\u2003";

    private final List<Paragraph> paragraphs = new ArrayList<>();

    /**
     * Reads a page.
     *
     * @throws IOException if it cannot be read or is not well-formed
     */
    static RichText read(URL page) throws IOException {
        try (InputStream stream = page.openStream()) {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            PageReader reader = new PageReader();
            NodeList body = factory.newDocumentBuilder().parse(stream).getElementsByTagName("body");
            reader.blocks((Element) body.item(0));
            return new RichText(List.copyOf(reader.paragraphs));
        } catch (SAXException | ParserConfigurationException e) {
            throw new IOException(page + " is not a help page: " + e.getMessage(), e);
        }
    }

    private void blocks(Element parent) {
        for (Element block : children(parent)) {
            switch (block.getTagName()) {
                case "h1" -> add(Kind.TITLE, 0, block);
                case "h2", "h3" -> add(Kind.HEADING, 0, block);
                case "ul" -> items(Kind.BULLET, block);
                case "ol" -> items(Kind.NUMBERED, block);
                case "div" -> blocks(block);
                case "img" -> picture(block);
                case "table" -> children(block).forEach(this::row);
                default -> add(Kind.TEXT, 0, block);
            }
        }
    }

    private void picture(Element image) {
        Run run = new Run(image.getAttribute("alt"), Style.PLAIN,
                image.getAttribute("src").replaceFirst("^picture:", ""));
        paragraphs.add(new Paragraph(Kind.PICTURE, 0, List.of(run)));
    }

    /** A row is a line, its first cell in bold. */
    private void row(Element row) {
        List<Run> runs = new ArrayList<>();
        for (Element cell : children(row)) {
            Style style = runs.isEmpty() ? Style.STRONG : Style.PLAIN;
            if (!runs.isEmpty()) {
                runs.add(new Run(GAP, Style.PLAIN, ""));
            }
            collect(cell, style, "", runs);
        }
        paragraphs.add(new Paragraph(Kind.BULLET, 0, List.copyOf(runs)));
    }

    private void items(Kind kind, Element list) {
        int number = 0;
        for (Element item : children(list)) {
            number++;
            add(kind, kind == Kind.NUMBERED ? number : 0, item);
        }
    }

    private void add(Kind kind, int number, Element block) {
        List<Run> runs = new ArrayList<>();
        collect(block, Style.PLAIN, "", runs);
        paragraphs.add(new Paragraph(kind, number, List.copyOf(runs)));
    }

    private void collect(Node parent, Style style, String target, List<Run> runs) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                collect(element, style(element, style), "a".equals(element.getTagName()) ? element.getAttribute("href")
                        : target, runs);
            } else if (node.getNodeType() == Node.TEXT_NODE) {
                text(node.getNodeValue(), style, target, runs);
            }
        }
    }

    /** White space is one space, and none at the beginning. */
    private static void text(String value, Style style, String target, List<Run> runs) {
        String text = value.replaceAll("\\s+", " ");
        String shown = runs.isEmpty() ? text.stripLeading() : text;
        if (!shown.isEmpty()) {
            runs.add(new Run(shown, style, target));
        }
    }

    private static Style style(Element element, Style outer) {
        return switch (element.getTagName()) {
            case "b", "strong" -> Style.STRONG;
            case "i", "em" -> Style.EMPHASIS;
            case "code" -> Style.CODE;
            case "a" -> Style.LINK;
            default -> outer;
        };
    }

    private static List<Element> children(Element parent) {
        List<Element> elements = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                elements.add(element);
            }
        }
        return elements;
    }
}
