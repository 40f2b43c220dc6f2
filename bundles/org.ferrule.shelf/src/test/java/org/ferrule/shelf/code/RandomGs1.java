/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * A random element string and what it says.
 *
 * @param bracketed as the independent encoder takes it: identifiers in square brackets
 * @param code what it says
 */
record RandomGs1(String bracketed, ProductCode code) {
    private static final String CHARACTERS = "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_"
            + "abcdefghijklmnopqrstuvwxyz";
    private static final List<String> IDENTIFIERS = List.of("01", "10", "11", "17", "21", "30", "02", "15", "20", "22",
            "37", "240", "241", "250", "710", "711", "712", "713", "714", "715");
    private static final LocalDate FIRST = LocalDate.of(2000, 1, 1);

    /** Draws up to that many elements in any order, of at most that many characters in all. */
    static RandomGs1 draw(Random random, int elements, int most) {
        List<String> identifiers = new ArrayList<>(IDENTIFIERS);
        Collections.shuffle(identifiers, random);
        Said said = new Said();
        for (String identifier : identifiers.subList(0, 1 + random.nextInt(elements))) {
            String value = value(identifier, random);
            if (said.length + identifier.length() + value.length() + 1 <= most) {
                said.add(identifier, value);
            }
        }
        return new RandomGs1(said.bracketed.toString(), said.code());
    }

    private static String value(String identifier, Random random) {
        return switch (identifier) {
            case "01", "02" -> gtin(random);
            case "11", "15", "17" -> date(random);
            case "20" -> digits(2, random);
            case "30", "37" -> digits(1 + random.nextInt(8), random);
            case "240", "241", "250" -> text(1 + random.nextInt(30), random);
            default -> text(1 + random.nextInt(20), random);
        };
    }

    /** Thirteen digits and the check digit, summed digit by digit and not as the class under test does it. */
    private static String gtin(Random random) {
        String digits = digits(13, random);
        int sum = 0;
        for (int i = 0; i < 13; i += 2) {
            sum += 3 * Character.getNumericValue(digits.charAt(i));
        }
        for (int i = 1; i < 13; i += 2) {
            sum += Character.getNumericValue(digits.charAt(i));
        }
        return digits + Math.floorMod(-sum, 10);
    }

    private static String date(Random random) {
        LocalDate date = FIRST.plusDays(random.nextInt(27_000));
        boolean monthOnly = random.nextInt(4) == 0;
        return String.format("%02d%02d%02d", date.getYear() % 100, date.getMonthValue(),
                monthOnly ? 0 : date.getDayOfMonth());
    }

    private static String digits(int length, Random random) {
        StringBuilder digits = new StringBuilder();
        for (int i = 0; i < length; i++) {
            digits.append(random.nextInt(10));
        }
        return digits.toString();
    }

    private static String text(int length, Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.append(CHARACTERS.charAt(random.nextInt(CHARACTERS.length())));
        }
        return text.toString();
    }

    /** What has been said, as text and as values. */
    private static final class Said {
        private final StringBuilder bracketed = new StringBuilder();
        private final List<Element> others = new ArrayList<>();
        private final List<Element> all = new ArrayList<>();
        private int length;

        void add(String identifier, String value) {
            bracketed.append('[').append(identifier).append(']').append(value);
            length += identifier.length() + value.length() + 1;
            all.add(new Element(identifier, value));
            if (IDENTIFIERS.indexOf(identifier) >= 6) {
                others.add(new Element(identifier, value));
            }
        }

        ProductCode code() {
            return new ProductCode(Scheme.GS1, value("01"), value("10"), value("21"), value("17").map(Said::date),
                    value("11").map(Said::date), value("30").map(Integer::valueOf), Optional.empty(), others);
        }

        private Optional<String> value(String identifier) {
            return all.stream().filter(element -> element.id().equals(identifier)).map(Element::value).findFirst();
        }

        private static LocalDate date(String digits) {
            LocalDate month = LocalDate.of(2000 + Integer.parseInt(digits.substring(0, 2)),
                    Integer.parseInt(digits.substring(2, 4)), 1);
            int day = Integer.parseInt(digits.substring(4));
            return day == 0 ? month.plusMonths(1).minusDays(1) : month.plusDays(day - 1L);
        }
    }
}
