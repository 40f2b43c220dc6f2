/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.AfterUseRule;
import org.ferrule.model.Allowance;
import org.ferrule.model.ChanceLimit;
import org.ferrule.model.ClearanceRule;
import org.ferrule.model.FlowLimit;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.RatioBand;
import org.ferrule.model.RuleSet;
import org.ferrule.model.Span;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Rule Set</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getSpans <em>Spans</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getClearances <em>Clearances</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getAfterUse <em>After Use</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getFlowLimits <em>Flow Limits</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getAllowances <em>Allowances</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getRatioBands <em>Ratio Bands</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getChanceLimits <em>Chance Limits</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getConfidence <em>Confidence</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getCoverage <em>Coverage</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RuleSetImpl#getWireAhead <em>Wire Ahead</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RuleSetImpl extends DocumentImpl implements RuleSet
{
	/**
	 * The cached value of the '{@link #getSpans() <em>Spans</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpans()
	 * @generated
	 * @ordered
	 */
	protected EList<Span> spans;

	/**
	 * The cached value of the '{@link #getClearances() <em>Clearances</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearances()
	 * @generated
	 * @ordered
	 */
	protected EList<ClearanceRule> clearances;

	/**
	 * The cached value of the '{@link #getAfterUse() <em>After Use</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAfterUse()
	 * @generated
	 * @ordered
	 */
	protected EList<AfterUseRule> afterUse;

	/**
	 * The cached value of the '{@link #getFlowLimits() <em>Flow Limits</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlowLimits()
	 * @generated
	 * @ordered
	 */
	protected EList<FlowLimit> flowLimits;

	/**
	 * The cached value of the '{@link #getAllowances() <em>Allowances</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAllowances()
	 * @generated
	 * @ordered
	 */
	protected EList<Allowance> allowances;

	/**
	 * The cached value of the '{@link #getRatioBands() <em>Ratio Bands</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatioBands()
	 * @generated
	 * @ordered
	 */
	protected EList<RatioBand> ratioBands;

	/**
	 * The cached value of the '{@link #getChanceLimits() <em>Chance Limits</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChanceLimits()
	 * @generated
	 * @ordered
	 */
	protected EList<ChanceLimit> chanceLimits;

	/**
	 * The default value of the '{@link #getConfidence() <em>Confidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConfidence()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal CONFIDENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConfidence() <em>Confidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConfidence()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal confidence = CONFIDENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoverage() <em>Coverage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoverage()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal COVERAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoverage() <em>Coverage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoverage()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal coverage = COVERAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWireAhead() <em>Wire Ahead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWireAhead()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension WIRE_AHEAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWireAhead() <em>Wire Ahead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWireAhead()
	 * @generated
	 * @ordered
	 */
	protected Dimension wireAhead = WIRE_AHEAD_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RuleSetImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.RULE_SET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Span> getSpans()
	{
		if (spans == null)
		{
			spans = new EObjectContainmentEList<Span>(Span.class, this, ModelPackage.RULE_SET__SPANS);
		}
		return spans;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ClearanceRule> getClearances()
	{
		if (clearances == null)
		{
			clearances = new EObjectContainmentEList<ClearanceRule>(ClearanceRule.class, this, ModelPackage.RULE_SET__CLEARANCES);
		}
		return clearances;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AfterUseRule> getAfterUse()
	{
		if (afterUse == null)
		{
			afterUse = new EObjectContainmentEList<AfterUseRule>(AfterUseRule.class, this, ModelPackage.RULE_SET__AFTER_USE);
		}
		return afterUse;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<FlowLimit> getFlowLimits()
	{
		if (flowLimits == null)
		{
			flowLimits = new EObjectContainmentEList<FlowLimit>(FlowLimit.class, this, ModelPackage.RULE_SET__FLOW_LIMITS);
		}
		return flowLimits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Allowance> getAllowances()
	{
		if (allowances == null)
		{
			allowances = new EObjectContainmentEList<Allowance>(Allowance.class, this, ModelPackage.RULE_SET__ALLOWANCES);
		}
		return allowances;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RatioBand> getRatioBands()
	{
		if (ratioBands == null)
		{
			ratioBands = new EObjectContainmentEList<RatioBand>(RatioBand.class, this, ModelPackage.RULE_SET__RATIO_BANDS);
		}
		return ratioBands;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ChanceLimit> getChanceLimits()
	{
		if (chanceLimits == null)
		{
			chanceLimits = new EObjectContainmentEList<ChanceLimit>(ChanceLimit.class, this, ModelPackage.RULE_SET__CHANCE_LIMITS);
		}
		return chanceLimits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getConfidence()
	{
		return confidence;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConfidence(BigDecimal newConfidence)
	{
		BigDecimal oldConfidence = confidence;
		confidence = newConfidence;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RULE_SET__CONFIDENCE, oldConfidence, confidence));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getCoverage()
	{
		return coverage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoverage(BigDecimal newCoverage)
	{
		BigDecimal oldCoverage = coverage;
		coverage = newCoverage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RULE_SET__COVERAGE, oldCoverage, coverage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getWireAhead()
	{
		return wireAhead;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWireAhead(Dimension newWireAhead)
	{
		Dimension oldWireAhead = wireAhead;
		wireAhead = newWireAhead;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RULE_SET__WIRE_AHEAD, oldWireAhead, wireAhead));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs)
	{
		switch (featureID)
		{
			case ModelPackage.RULE_SET__SPANS:
				return ((InternalEList<?>)getSpans()).basicRemove(otherEnd, msgs);
			case ModelPackage.RULE_SET__CLEARANCES:
				return ((InternalEList<?>)getClearances()).basicRemove(otherEnd, msgs);
			case ModelPackage.RULE_SET__AFTER_USE:
				return ((InternalEList<?>)getAfterUse()).basicRemove(otherEnd, msgs);
			case ModelPackage.RULE_SET__FLOW_LIMITS:
				return ((InternalEList<?>)getFlowLimits()).basicRemove(otherEnd, msgs);
			case ModelPackage.RULE_SET__ALLOWANCES:
				return ((InternalEList<?>)getAllowances()).basicRemove(otherEnd, msgs);
			case ModelPackage.RULE_SET__RATIO_BANDS:
				return ((InternalEList<?>)getRatioBands()).basicRemove(otherEnd, msgs);
			case ModelPackage.RULE_SET__CHANCE_LIMITS:
				return ((InternalEList<?>)getChanceLimits()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.RULE_SET__SPANS:
				return getSpans();
			case ModelPackage.RULE_SET__CLEARANCES:
				return getClearances();
			case ModelPackage.RULE_SET__AFTER_USE:
				return getAfterUse();
			case ModelPackage.RULE_SET__FLOW_LIMITS:
				return getFlowLimits();
			case ModelPackage.RULE_SET__ALLOWANCES:
				return getAllowances();
			case ModelPackage.RULE_SET__RATIO_BANDS:
				return getRatioBands();
			case ModelPackage.RULE_SET__CHANCE_LIMITS:
				return getChanceLimits();
			case ModelPackage.RULE_SET__CONFIDENCE:
				return getConfidence();
			case ModelPackage.RULE_SET__COVERAGE:
				return getCoverage();
			case ModelPackage.RULE_SET__WIRE_AHEAD:
				return getWireAhead();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.RULE_SET__SPANS:
				getSpans().clear();
				getSpans().addAll((Collection<? extends Span>)newValue);
				return;
			case ModelPackage.RULE_SET__CLEARANCES:
				getClearances().clear();
				getClearances().addAll((Collection<? extends ClearanceRule>)newValue);
				return;
			case ModelPackage.RULE_SET__AFTER_USE:
				getAfterUse().clear();
				getAfterUse().addAll((Collection<? extends AfterUseRule>)newValue);
				return;
			case ModelPackage.RULE_SET__FLOW_LIMITS:
				getFlowLimits().clear();
				getFlowLimits().addAll((Collection<? extends FlowLimit>)newValue);
				return;
			case ModelPackage.RULE_SET__ALLOWANCES:
				getAllowances().clear();
				getAllowances().addAll((Collection<? extends Allowance>)newValue);
				return;
			case ModelPackage.RULE_SET__RATIO_BANDS:
				getRatioBands().clear();
				getRatioBands().addAll((Collection<? extends RatioBand>)newValue);
				return;
			case ModelPackage.RULE_SET__CHANCE_LIMITS:
				getChanceLimits().clear();
				getChanceLimits().addAll((Collection<? extends ChanceLimit>)newValue);
				return;
			case ModelPackage.RULE_SET__CONFIDENCE:
				setConfidence((BigDecimal)newValue);
				return;
			case ModelPackage.RULE_SET__COVERAGE:
				setCoverage((BigDecimal)newValue);
				return;
			case ModelPackage.RULE_SET__WIRE_AHEAD:
				setWireAhead((Dimension)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.RULE_SET__SPANS:
				getSpans().clear();
				return;
			case ModelPackage.RULE_SET__CLEARANCES:
				getClearances().clear();
				return;
			case ModelPackage.RULE_SET__AFTER_USE:
				getAfterUse().clear();
				return;
			case ModelPackage.RULE_SET__FLOW_LIMITS:
				getFlowLimits().clear();
				return;
			case ModelPackage.RULE_SET__ALLOWANCES:
				getAllowances().clear();
				return;
			case ModelPackage.RULE_SET__RATIO_BANDS:
				getRatioBands().clear();
				return;
			case ModelPackage.RULE_SET__CHANCE_LIMITS:
				getChanceLimits().clear();
				return;
			case ModelPackage.RULE_SET__CONFIDENCE:
				setConfidence(CONFIDENCE_EDEFAULT);
				return;
			case ModelPackage.RULE_SET__COVERAGE:
				setCoverage(COVERAGE_EDEFAULT);
				return;
			case ModelPackage.RULE_SET__WIRE_AHEAD:
				setWireAhead(WIRE_AHEAD_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.RULE_SET__SPANS:
				return spans != null && !spans.isEmpty();
			case ModelPackage.RULE_SET__CLEARANCES:
				return clearances != null && !clearances.isEmpty();
			case ModelPackage.RULE_SET__AFTER_USE:
				return afterUse != null && !afterUse.isEmpty();
			case ModelPackage.RULE_SET__FLOW_LIMITS:
				return flowLimits != null && !flowLimits.isEmpty();
			case ModelPackage.RULE_SET__ALLOWANCES:
				return allowances != null && !allowances.isEmpty();
			case ModelPackage.RULE_SET__RATIO_BANDS:
				return ratioBands != null && !ratioBands.isEmpty();
			case ModelPackage.RULE_SET__CHANCE_LIMITS:
				return chanceLimits != null && !chanceLimits.isEmpty();
			case ModelPackage.RULE_SET__CONFIDENCE:
				return CONFIDENCE_EDEFAULT == null ? confidence != null : !CONFIDENCE_EDEFAULT.equals(confidence);
			case ModelPackage.RULE_SET__COVERAGE:
				return COVERAGE_EDEFAULT == null ? coverage != null : !COVERAGE_EDEFAULT.equals(coverage);
			case ModelPackage.RULE_SET__WIRE_AHEAD:
				return WIRE_AHEAD_EDEFAULT == null ? wireAhead != null : !WIRE_AHEAD_EDEFAULT.equals(wireAhead);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (confidence: ");
		result.append(confidence);
		result.append(", coverage: ");
		result.append(coverage);
		result.append(", wireAhead: ");
		result.append(wireAhead);
		result.append(')');
		return result.toString();
	}

} //RuleSetImpl
