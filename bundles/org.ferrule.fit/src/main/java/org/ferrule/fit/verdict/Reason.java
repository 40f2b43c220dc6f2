/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.verdict;

import java.util.List;
import java.util.Objects;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Length;

/**
 * One reason of a verdict: a code and its numbers. Words are made where they are shown.
 *
 * @param code what it says
 * @param arguments in the order that the code gives
 */
public record Reason(ReasonCode code, List<Argument> arguments) {

    /** One argument of a reason. */
    public sealed interface Argument {
    }

    /** A clearance: never rounded upward. */
    public record ClearanceArgument(Length value) implements Argument {
    }

    /** A diameter. */
    public record DiameterArgument(Length value) implements Argument {
    }

    /** A length along a device. */
    public record DistanceArgument(Length value) implements Argument {
    }

    /** A name or a text as printed. */
    public record NameArgument(String value) implements Argument {
    }

    /** A count. */
    public record CountArgument(int value) implements Argument {
    }

    /** A share or a chance, between 0 and 1. */
    public record ShareArgument(double value) implements Argument {
    }

    /** A source. */
    public record SourceArgument(SourceRef value) implements Argument {
    }

    public Reason {
        Objects.requireNonNull(code, "code");
        arguments = List.copyOf(arguments);
    }

    /** A reason with its arguments. */
    public static Reason of(ReasonCode code, Argument... arguments) {
        return new Reason(code, List.of(arguments));
    }

    public static Argument clearance(Length value) {
        return new ClearanceArgument(value);
    }

    public static Argument diameter(Length value) {
        return new DiameterArgument(value);
    }

    public static Argument distance(Length value) {
        return new DistanceArgument(value);
    }

    public static Argument name(String value) {
        return new NameArgument(value);
    }

    public static Argument count(int value) {
        return new CountArgument(value);
    }

    public static Argument share(double value) {
        return new ShareArgument(value);
    }

    public static Argument source(SourceRef value) {
        return new SourceArgument(value);
    }
}
