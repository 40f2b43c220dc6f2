/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Text with tabs between cells and line ends between rows, as spreadsheets copy it. */
public final class TabText {

    private static final Pattern SPECIAL = Pattern.compile("[\t\r\n\"]");

    private TabText() {
    }

    /** Writes rows; cells with tabs, line ends or quotation marks are put into quotation marks. */
    public static String write(List<List<String>> rows) {
        return rows.stream().map(row -> row.stream().map(TabText::quoted).collect(Collectors.joining("\t")))
                .collect(Collectors.joining("\n"));
    }

    private static String quoted(String cell) {
        return SPECIAL.matcher(cell).find() ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    /** Reads rows; empty lines at the end are none. */
    public static List<List<String>> read(String text) {
        return new Reader(text).rows();
    }

    private static final class Reader {

        private final String text;
        private final List<List<String>> rows = new ArrayList<>();
        private List<String> row = new ArrayList<>();
        private int at;

        Reader(String text) {
            this.text = text.replace("\r\n", "\n").replace('\r', '\n');
        }

        List<List<String>> rows() {
            while (at < text.length()) {
                row.add(cell());
                boolean end = at >= text.length() || text.charAt(at) == '\n';
                boolean trailingTab = !end && at == text.length() - 1;
                at++;
                if (trailingTab) {
                    row.add("");
                }
                if (end || trailingTab) {
                    rows.add(row);
                    row = new ArrayList<>();
                }
            }
            while (!rows.isEmpty() && rows.get(rows.size() - 1).stream().allMatch(String::isBlank)) {
                rows.remove(rows.size() - 1);
            }
            return rows;
        }

        private String cell() {
            return at < text.length() && text.charAt(at) == '"' && closing() > 0 ? quotedCell() : plainCell();
        }

        /** A quotation mark inside of a text, such as that of inches, is no beginning of a quotation. */
        private int closing() {
            int end = text.indexOf('"', at + 1);
            while (end >= 0 && end + 1 < text.length() && text.charAt(end + 1) == '"') {
                end = text.indexOf('"', end + 2);
            }
            boolean atEnd = end >= 0 && (end + 1 == text.length() || "\t\n".indexOf(text.charAt(end + 1)) >= 0);
            return atEnd ? end : -1;
        }

        private String quotedCell() {
            int end = closing();
            String cell = text.substring(at + 1, end).replace("\"\"", "\"");
            at = end + 1;
            return cell;
        }

        private String plainCell() {
            int start = at;
            while (at < text.length() && text.charAt(at) != '\t' && text.charAt(at) != '\n') {
                at++;
            }
            return text.substring(start, at);
        }
    }
}
