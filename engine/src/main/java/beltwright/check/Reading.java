package beltwright.check;

import beltwright.quantity.Numbers;
import beltwright.quantity.Range;

/// What a check measured: demand and capacity, at nominal and at the worst and best limits. Filled anew for every
/// check,
/// so that asking costs next to nothing.
public final class Reading {
    double demand;
    double capacity;
    double demandWorst;
    double capacityWorst;
    double demandBest;
    double capacityBest;

    public void set(Range demand, Range capacity) {
        this.demand = demand.nominal();
        this.demandWorst = demand.high();
        this.demandBest = demand.low();
        this.capacity = capacity.nominal();
        this.capacityWorst = capacity.low();
        this.capacityBest = capacity.high();
    }

    public void set(double demand, Range capacity) {
        set(Range.exact(demand), capacity);
    }

    /// A yes-or-no question: one is wanted, one or none is there.
    public void answer(boolean yes) {
        set(1, Range.exact(yes ? 1 : 0));
    }

    public double demand() {
        return demand;
    }

    public double capacity() {
        return capacity;
    }

    public double demandWorst() {
        return demandWorst;
    }

    public double capacityWorst() {
        return capacityWorst;
    }

    public boolean known() {
        return !Double.isNaN(demand) && !Double.isNaN(capacity);
    }

    public Verdict verdict() {
        if (!known()) {
            return Verdict.CANNOT_TELL;
        }
        if (capacity < demand) {
            return Verdict.FAILS;
        }
        return capacityWorst >= demandWorst
                ? Verdict.HOLDS
                : Verdict.MARGINAL; // marginal too where the worst is unknown
    }

    /// {@return the capacity written with as many digits as its limits carry}
    public String capacityText() {
        return Numbers.within(capacity, capacityWorst, capacityBest);
    }

    public String worstText() {
        return Numbers.within(capacityWorst, capacityWorst, capacityBest);
    }

    public String demandText() {
        return Numbers.within(demand, demandBest, demandWorst);
    }

    /// {@return whether every number is the same to the last bit}
    public boolean same(Reading o) {
        return bits(demand, o.demand)
                && bits(capacity, o.capacity)
                && bits(demandWorst, o.demandWorst)
                && bits(capacityWorst, o.capacityWorst)
                && bits(demandBest, o.demandBest)
                && bits(capacityBest, o.capacityBest);
    }

    private static boolean bits(double a, double b) {
        return Double.doubleToLongBits(a) == Double.doubleToLongBits(b);
    }

    @Override
    public String toString() {
        return capacity + " (" + capacityWorst + " to " + capacityBest + ") for " + demand + " (" + demandBest + " to "
                + demandWorst + ")";
    }
}
