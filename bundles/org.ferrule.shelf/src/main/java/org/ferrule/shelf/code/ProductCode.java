/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a code on a box says. A box may bear two codes, one with the device identifier and one with the rest; see
 * {@link #join}.
 *
 * @param scheme whose rules the code follows
 * @param di device identifier: a GTIN with all 14 digits, or the HIBC identifier (labeller, product, unit of measure)
 *        without its leading plus
 * @param lot lot or batch number
 * @param serial serial number
 * @param expiry last day of use; of a code that names only a month, its last day
 * @param made day of manufacture; of a code that names only a month, its last day
 * @param quantity number of units in the box
 * @param link HIBC: the check character of a primary code, or the link character of a secondary one, which repeats it
 * @param others everything else that the code says, in its order
 */
public record ProductCode(Scheme scheme, Optional<String> di, Optional<String> lot, Optional<String> serial,
        Optional<LocalDate> expiry, Optional<LocalDate> made, Optional<Integer> quantity, Optional<Character> link,
        List<Element> others) {

    /** Copies the list. */
    public ProductCode {
        others = List.copyOf(others);
    }

    /**
     * Returns what this code and another one on the same box say together. Both may say the same.
     *
     * @param other the second code
     * @throws CodeException if the codes are of different schemes, contradict each other, or the link character of one
     *         is not the check character of the other; its text is then the value of the second code
     */
    public ProductCode join(ProductCode other) throws CodeException {
        if (scheme != other.scheme) {
            throw new CodeException(CodeFault.LINK, other.scheme.name(), 0, "a second code of " + scheme);
        }
        List<Element> all = new ArrayList<>(others);
        for (Element element : other.others) {
            agreed(CodeFault.DUPLICATE, element.id(), valueOf(element.id()), Optional.of(element.value()));
            if (!all.contains(element)) {
                all.add(element);
            }
        }
        return new ProductCode(scheme, agreed(CodeFault.LINK, "device identifier", di, other.di),
                agreed(CodeFault.DUPLICATE, "lot", lot, other.lot),
                agreed(CodeFault.DUPLICATE, "serial number", serial, other.serial),
                agreed(CodeFault.DUPLICATE, "expiry", expiry, other.expiry),
                agreed(CodeFault.DUPLICATE, "date of manufacture", made, other.made),
                agreed(CodeFault.DUPLICATE, "quantity", quantity, other.quantity),
                agreed(CodeFault.LINK, "link character", link, other.link), all);
    }

    private Optional<String> valueOf(String id) {
        return others.stream().filter(element -> element.id().equals(id)).map(Element::value).findFirst();
    }

    private static <T> Optional<T> agreed(CodeFault fault, String what, Optional<T> one, Optional<T> two)
            throws CodeException {
        if (one.isPresent() && two.isPresent() && !one.equals(two)) {
            throw new CodeException(fault, two.get().toString(), 0, "the " + what + " of the first code: " + one.get());
        }
        return one.or(() -> two);
    }
}
