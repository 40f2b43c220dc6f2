/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Case Aim</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a plan is to spare, and what limits it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.CaseAim#getObjective <em>Objective</em>}</li>
 *   <li>{@link org.ferrule.model.CaseAim#getStoppingCost <em>Stopping Cost</em>}</li>
 *   <li>{@link org.ferrule.model.CaseAim#isTiersFirst <em>Tiers First</em>}</li>
 *   <li>{@link org.ferrule.model.CaseAim#isOneNewRiskAStep <em>One New Risk AStep</em>}</li>
 *   <li>{@link org.ferrule.model.CaseAim#getSameAxisDiscount <em>Same Axis Discount</em>}</li>
 *   <li>{@link org.ferrule.model.CaseAim#isBudgetsLimit <em>Budgets Limit</em>}</li>
 *   <li>{@link org.ferrule.model.CaseAim#getBudgets <em>Budgets</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getCaseAim()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Aim'"
 * @generated
 */
public interface CaseAim extends Element
{
	/**
	 * Returns the value of the '<em><b>Objective</b></em>' attribute.
	 * The default value is <code>"time"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.ResourceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is to be spared.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Objective</em>' attribute.
	 * @see org.ferrule.model.ResourceKind
	 * @see #isSetObjective()
	 * @see #unsetObjective()
	 * @see #setObjective(ResourceKind)
	 * @see org.ferrule.model.ModelPackage#getCaseAim_Objective()
	 * @model default="time" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='To be spared'"
	 * @generated
	 */
	ResourceKind getObjective();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseAim#getObjective <em>Objective</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Objective</em>' attribute.
	 * @see org.ferrule.model.ResourceKind
	 * @see #isSetObjective()
	 * @see #unsetObjective()
	 * @see #getObjective()
	 * @generated
	 */
	void setObjective(ResourceKind value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.CaseAim#getObjective <em>Objective</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetObjective()
	 * @see #getObjective()
	 * @see #setObjective(ResourceKind)
	 * @generated
	 */
	void unsetObjective();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.CaseAim#getObjective <em>Objective</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Objective</em>' attribute is set.
	 * @see #unsetObjective()
	 * @see #getObjective()
	 * @see #setObjective(ResourceKind)
	 * @generated
	 */
	boolean isSetObjective();

	/**
	 * Returns the value of the '<em><b>Stopping Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it costs to end without success, in the unit of the objective.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stopping Cost</em>' attribute.
	 * @see #setStoppingCost(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getCaseAim_StoppingCost()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 least='0' label='Cost of stopping'"
	 * @generated
	 */
	BigDecimal getStoppingCost();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseAim#getStoppingCost <em>Stopping Cost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stopping Cost</em>' attribute.
	 * @see #getStoppingCost()
	 * @generated
	 */
	void setStoppingCost(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Tiers First</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether a higher hazard never comes before a lower one that is possible.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tiers First</em>' attribute.
	 * @see #isSetTiersFirst()
	 * @see #unsetTiersFirst()
	 * @see #setTiersFirst(boolean)
	 * @see org.ferrule.model.ModelPackage#getCaseAim_TiersFirst()
	 * @model default="true" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Lower hazard first'"
	 * @generated
	 */
	boolean isTiersFirst();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseAim#isTiersFirst <em>Tiers First</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tiers First</em>' attribute.
	 * @see #isSetTiersFirst()
	 * @see #unsetTiersFirst()
	 * @see #isTiersFirst()
	 * @generated
	 */
	void setTiersFirst(boolean value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.CaseAim#isTiersFirst <em>Tiers First</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetTiersFirst()
	 * @see #isTiersFirst()
	 * @see #setTiersFirst(boolean)
	 * @generated
	 */
	void unsetTiersFirst();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.CaseAim#isTiersFirst <em>Tiers First</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Tiers First</em>' attribute is set.
	 * @see #unsetTiersFirst()
	 * @see #isTiersFirst()
	 * @see #setTiersFirst(boolean)
	 * @generated
	 */
	boolean isSetTiersFirst();

	/**
	 * Returns the value of the '<em><b>One New Risk AStep</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether no step brings two new risks at once.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>One New Risk AStep</em>' attribute.
	 * @see #isSetOneNewRiskAStep()
	 * @see #unsetOneNewRiskAStep()
	 * @see #setOneNewRiskAStep(boolean)
	 * @see org.ferrule.model.ModelPackage#getCaseAim_OneNewRiskAStep()
	 * @model default="true" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='One new risk a step'"
	 * @generated
	 */
	boolean isOneNewRiskAStep();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseAim#isOneNewRiskAStep <em>One New Risk AStep</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>One New Risk AStep</em>' attribute.
	 * @see #isSetOneNewRiskAStep()
	 * @see #unsetOneNewRiskAStep()
	 * @see #isOneNewRiskAStep()
	 * @generated
	 */
	void setOneNewRiskAStep(boolean value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.CaseAim#isOneNewRiskAStep <em>One New Risk AStep</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetOneNewRiskAStep()
	 * @see #isOneNewRiskAStep()
	 * @see #setOneNewRiskAStep(boolean)
	 * @generated
	 */
	void unsetOneNewRiskAStep();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.CaseAim#isOneNewRiskAStep <em>One New Risk AStep</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>One New Risk AStep</em>' attribute is set.
	 * @see #unsetOneNewRiskAStep()
	 * @see #isOneNewRiskAStep()
	 * @see #setOneNewRiskAStep(boolean)
	 * @generated
	 */
	boolean isSetOneNewRiskAStep();

	/**
	 * Returns the value of the '<em><b>Same Axis Discount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The factor on the chances of techniques on the axis of one that failed; 1, which turns it off, when not given.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Same Axis Discount</em>' attribute.
	 * @see #setSameAxisDiscount(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getCaseAim_SameAxisDiscount()
	 * @model annotation="https://ferrule.invalid/annotation/1 above='0' most='1' label='Discount on the same axis'"
	 * @generated
	 */
	BigDecimal getSameAxisDiscount();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseAim#getSameAxisDiscount <em>Same Axis Discount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Same Axis Discount</em>' attribute.
	 * @see #getSameAxisDiscount()
	 * @generated
	 */
	void setSameAxisDiscount(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Budgets Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the budget of the objective limits the plan; else all budgets are lines across it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Budgets Limit</em>' attribute.
	 * @see #setBudgetsLimit(boolean)
	 * @see org.ferrule.model.ModelPackage#getCaseAim_BudgetsLimit()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Budget is a limit'"
	 * @generated
	 */
	boolean isBudgetsLimit();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseAim#isBudgetsLimit <em>Budgets Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Budgets Limit</em>' attribute.
	 * @see #isBudgetsLimit()
	 * @generated
	 */
	void setBudgetsLimit(boolean value);

	/**
	 * Returns the value of the '<em><b>Budgets</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much may be used in all; what has no budget has no limit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Budgets</em>' containment reference.
	 * @see #setBudgets(Costs)
	 * @see org.ferrule.model.ModelPackage#getCaseAim_Budgets()
	 * @model containment="true"
	 * @generated
	 */
	Costs getBudgets();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseAim#getBudgets <em>Budgets</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Budgets</em>' containment reference.
	 * @see #getBudgets()
	 * @generated
	 */
	void setBudgets(Costs value);

} // CaseAim
