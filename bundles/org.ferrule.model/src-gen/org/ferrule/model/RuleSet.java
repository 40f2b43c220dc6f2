/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Rule Set</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The clearances and assumptions in force, each with its source.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.RuleSet#getSpans <em>Spans</em>}</li>
 *   <li>{@link org.ferrule.model.RuleSet#getClearances <em>Clearances</em>}</li>
 *   <li>{@link org.ferrule.model.RuleSet#getAfterUse <em>After Use</em>}</li>
 *   <li>{@link org.ferrule.model.RuleSet#getFlowLimits <em>Flow Limits</em>}</li>
 *   <li>{@link org.ferrule.model.RuleSet#getAllowances <em>Allowances</em>}</li>
 *   <li>{@link org.ferrule.model.RuleSet#getRatioBands <em>Ratio Bands</em>}</li>
 *   <li>{@link org.ferrule.model.RuleSet#getChanceLimits <em>Chance Limits</em>}</li>
 *   <li>{@link org.ferrule.model.RuleSet#getConfidence <em>Confidence</em>}</li>
 *   <li>{@link org.ferrule.model.RuleSet#getCoverage <em>Coverage</em>}</li>
 *   <li>{@link org.ferrule.model.RuleSet#getWireAhead <em>Wire Ahead</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getRuleSet()
 * @model annotation="https://ferrule.invalid/annotation/1 suffix='.rules.json' format='ferrule.rules'"
 * @generated
 */
public interface RuleSet extends Document
{
	/**
	 * Returns the value of the '<em><b>Spans</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Span}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far figures may lie from what is printed, where the print does not say it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spans</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getRuleSet_Spans()
	 * @model containment="true"
	 * @generated
	 */
	EList<Span> getSpans();

	/**
	 * Returns the value of the '<em><b>Clearances</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.ClearanceRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The clearances that a passage needs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Clearances</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getRuleSet_Clearances()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Required clearances'"
	 * @generated
	 */
	EList<ClearanceRule> getClearances();

	/**
	 * Returns the value of the '<em><b>After Use</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.AfterUseRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much profiles grow by use, where no profile after use is printed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>After Use</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getRuleSet_AfterUse()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Growth by use'"
	 * @generated
	 */
	EList<AfterUseRule> getAfterUse();

	/**
	 * Returns the value of the '<em><b>Flow Limits</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.FlowLimit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The shares of flow below which a caution is due. Sources disagree, so there may be several for one use.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Flow Limits</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getRuleSet_FlowLimits()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Limits of flow'"
	 * @generated
	 */
	EList<FlowLimit> getFlowLimits();

	/**
	 * Returns the value of the '<em><b>Allowances</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Allowance}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The lengths to allow for; of several for one purpose the last one holds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Allowances</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getRuleSet_Allowances()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Allowances of length'"
	 * @generated
	 */
	EList<Allowance> getAllowances();

	/**
	 * Returns the value of the '<em><b>Ratio Bands</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.RatioBand}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The bands of ratios to the diameter of the vessel. Sources disagree, so they may overlap.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ratio Bands</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getRuleSet_RatioBands()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Bands of ratios to the vessel'"
	 * @generated
	 */
	EList<RatioBand> getRatioBands();

	/**
	 * Returns the value of the '<em><b>Chance Limits</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.ChanceLimit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The chances of overlap above which a caution is due, where standard deviations are stated or samples were measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Chance Limits</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getRuleSet_ChanceLimits()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Limits of chance'"
	 * @generated
	 */
	EList<ChanceLimit> getChanceLimits();

	/**
	 * Returns the value of the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The confidence of the tolerance interval of a sample, between 0 and 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Confidence</em>' attribute.
	 * @see #setConfidence(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getRuleSet_Confidence()
	 * @model annotation="https://ferrule.invalid/annotation/1 above='0' below='1'"
	 * @generated
	 */
	BigDecimal getConfidence();

	/**
	 * Sets the value of the '{@link org.ferrule.model.RuleSet#getConfidence <em>Confidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Confidence</em>' attribute.
	 * @see #getConfidence()
	 * @generated
	 */
	void setConfidence(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Coverage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The coverage of the tolerance interval of a sample, between 0 and 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Coverage</em>' attribute.
	 * @see #setCoverage(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getRuleSet_Coverage()
	 * @model annotation="https://ferrule.invalid/annotation/1 above='0' below='1'"
	 * @generated
	 */
	BigDecimal getCoverage();

	/**
	 * Sets the value of the '{@link org.ferrule.model.RuleSet#getCoverage <em>Coverage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coverage</em>' attribute.
	 * @see #getCoverage()
	 * @generated
	 */
	void setCoverage(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Wire Ahead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much of a wire stays beyond a device that is loaded over its tail, when no reach is asked for (cm or mm): it keeps spring tips out of the question.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wire Ahead</em>' attribute.
	 * @see #setWireAhead(Dimension)
	 * @see org.ferrule.model.ModelPackage#getRuleSet_WireAhead()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH' label='Wire ahead'"
	 * @generated
	 */
	Dimension getWireAhead();

	/**
	 * Sets the value of the '{@link org.ferrule.model.RuleSet#getWireAhead <em>Wire Ahead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wire Ahead</em>' attribute.
	 * @see #getWireAhead()
	 * @generated
	 */
	void setWireAhead(Dimension value);

} // RuleSet
