/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Searches the best order over the states, with the relaxation as bound. Where it looks at more states than it may, it
 * goes on with the first order that comes to hand, and knows how much better another could be.
 */
final class Search {
    /** Differences below this share of the stopping cost are rounding. */
    private static final double ROUNDING = 1e-12;
    private static final int WORK_OF_A_RELAXATION = 20;
    private static final int STOP = -1;
    private static final int LOWER_TIERS = -2;

    /** What is known of a state. */
    private static final class Node {
        double lower;
        double upper;
        int best = STOP;

        Node(double lower, double upper) {
            this.lower = lower;
            this.upper = upper;
        }

        boolean isExact() {
            return lower >= upper;
        }
    }

    /** A move, where it leads, and the least that it can cost. */
    private record Branch(int move, State next, double cost, double fails, double bound) {
    }

    /** Where a sequence of steps leads, and what it costs to get there. */
    private record Passage(State end, double cost, double fails) {
    }

    private final Model model;
    private final Moves moves;
    private final List<Relaxation> relaxations = new ArrayList<>();
    private final List<Map<State, Node>> known = new ArrayList<>();
    private final double tolerance;
    private final boolean discounted;
    /** Whether of the tries that nothing waits for only the best need be looked at; docs/ordering.md, 4. */
    private final boolean byIndex;
    private long left;

    /** @param limit work to be done at most, in states that a bound is found for */
    Search(Model model, long limit) {
        this.model = model;
        moves = new Moves(model);
        left = limit;
        tolerance = ROUNDING * model.stop;
        OrderRules rules = model.problem.rules();
        discounted = rules.sameAxisDiscount() < 1;
        for (int level = 0; level < model.levels; level++) {
            relaxations.add(new Relaxation(model, level, new double[0]));
            known.add(new HashMap<>());
        }
        // What a set-up makes impossible may have to come before its turn by index.
        byIndex = !discounted && rules.budget().isEmpty() && !rules.oneNewRiskAStep() && !model.exclusive
                && relaxations.get(0).isComplete();
    }

    /** The best order, as far as it was found. */
    record Found(List<Integer> moves, double lower, double upper) {
    }

    Found best() {
        int top = model.levels - 1;
        State start = State.start(model);
        Node root = visit(top, start, Double.POSITIVE_INFINITY);
        List<Integer> order = new ArrayList<>();
        collect(top, start, order);
        return new Found(order, root.lower, root.upper);
    }

    /** Whether steps of lower tiers alone are worth it in a state. */
    boolean isLowerPossible(int level, State state) {
        return level > 0 && visit(level - 1, state, Double.POSITIVE_INFINITY).best != STOP;
    }

    private Node node(int level, State state) {
        Map<State, Node> nodes = known.get(level);
        Node node = nodes.get(state);
        if (node == null) {
            left -= discounted ? WORK_OF_A_RELAXATION : 1;
            node = new Node(relaxation(level, state).bound(state), model.stop);
            if (node.lower >= model.stop - tolerance) {
                node.lower = model.stop;
            }
            nodes.put(state, node);
        }
        return node;
    }

    /** Chances only fall, so that those of the state are the best that can still be had. */
    private Relaxation relaxation(int level, State state) {
        return discounted ? new Relaxation(model, level, moves.factors(state)) : relaxations.get(level);
    }

    /**
     * Looks for the best order from a state on with steps up to a tier.
     *
     * @param enough an order that is no better than this is of no use
     */
    private Node visit(int level, State state, double enough) {
        Node node = node(level, state);
        if (node.isExact() || node.lower >= enough) {
            return node;
        }
        if (level > 0) {
            Node below = visit(level - 1, state, Double.POSITIVE_INFINITY);
            if (below.best != STOP) {
                throughLowerTiers(node, level, state, enough, below.isExact());
                return node;
            }
        }
        if (left <= 0) {
            takeFirst(node, level, state);
        } else {
            branch(node, level, state, enough);
        }
        return node;
    }

    private void throughLowerTiers(Node node, int level, State state, double enough, boolean exact) {
        Passage passage = passage(level - 1, state);
        node.best = LOWER_TIERS;
        if (passage.fails == 0) {
            node.upper = passage.cost;
            node.lower = exact ? passage.cost : node.lower;
            return;
        }
        Node then = visit(level, passage.end, (enough - passage.cost) / passage.fails);
        node.upper = passage.cost + passage.fails * then.upper;
        if (exact) {
            node.lower = then.isExact() ? node.upper : Math.max(node.lower, passage.cost + passage.fails * then.lower);
        }
    }

    private void branch(Node node, int level, State state, double enough) {
        double least = model.stop;
        for (Branch branch : branches(level, state)) {
            double useful = Math.min(node.upper, enough);
            if (branch.bound >= useful - tolerance || left <= 0) {
                least = Math.min(least, branch.bound);
                break;
            }
            Node then = branch.fails == 0 ? new Node(0, 0)
                    : visit(level, branch.next, (useful - branch.cost) / branch.fails);
            least = Math.min(least, branch.cost + branch.fails * then.lower);
            double upper = branch.cost + branch.fails * then.upper;
            if (upper < node.upper) {
                node.upper = upper;
                node.best = branch.move;
            }
            if (node.upper <= node.lower + tolerance) {
                break;
            }
        }
        node.lower = Math.max(node.lower, Math.min(least, node.upper));
        if (node.upper <= node.lower + tolerance) {
            node.lower = node.upper;
        }
    }

    /** Goes on with the move that looks best, and looks at nothing else. */
    private void takeFirst(Node node, int level, State state) {
        List<Branch> branches = branches(level, state);
        if (branches.isEmpty() || branches.get(0).bound >= node.upper - tolerance) {
            return;
        }
        Branch first = branches.get(0);
        Node then = visit(level, first.next, Double.POSITIVE_INFINITY);
        double upper = first.cost + first.fails * then.upper;
        if (upper < node.upper) {
            node.upper = upper;
            node.best = first.move;
        }
    }

    private List<Branch> branches(int level, State state) {
        List<Branch> branches = new ArrayList<>();
        int best = byIndex ? relaxations.get(level).bestTry(state) : -1;
        for (int move = 0; move < moves.count(); move++) {
            if (moves.level(move) <= level && moves.isAllowed(state, move) && isOfUse(state, move, best)) {
                State next = moves.after(state, move);
                double cost = moves.cost(state, move);
                double fails = 1 - moves.chance(state, move);
                branches.add(new Branch(move, next, cost, fails, cost + fails * node(level, next).lower));
            }
        }
        branches.sort(Comparator.comparingDouble(Branch::bound));
        return branches;
    }

    private boolean isOfUse(State state, int move, int best) {
        if (moves.isSetup(move) || !byIndex) {
            return true;
        }
        int option = moves.option(move);
        return option == best || model.isGate(option) && state.tries[option] == 0;
    }

    private Passage passage(int level, State start) {
        List<Integer> order = new ArrayList<>();
        collect(level, start, order);
        State state = start;
        double cost = 0;
        double fails = 1;
        for (int move : order) {
            cost += fails * moves.cost(state, move);
            fails *= 1 - moves.chance(state, move);
            state = moves.after(state, move);
        }
        return new Passage(state, cost, fails);
    }

    /** Appends the order that was found from a state on. */
    private void collect(int level, State start, List<Integer> order) {
        State state = start;
        Node node = known.get(level).get(state);
        while (node != null && node.best != STOP) {
            int before = order.size();
            if (node.best == LOWER_TIERS) {
                collect(level - 1, state, order);
            } else {
                order.add(node.best);
            }
            for (int move : order.subList(before, order.size())) {
                state = moves.after(state, move);
            }
            node = known.get(level).get(state);
        }
    }
}
