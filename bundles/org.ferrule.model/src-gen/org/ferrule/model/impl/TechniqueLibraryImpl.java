/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.Fact;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Role;
import org.ferrule.model.Setup;
import org.ferrule.model.StopRule;
import org.ferrule.model.Technique;
import org.ferrule.model.TechniqueLibrary;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Technique Library</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.TechniqueLibraryImpl#getSituation <em>Situation</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueLibraryImpl#getFacts <em>Facts</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueLibraryImpl#getSetups <em>Setups</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueLibraryImpl#getTechniques <em>Techniques</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueLibraryImpl#getBailOut <em>Bail Out</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueLibraryImpl#getStopRules <em>Stop Rules</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TechniqueLibraryImpl extends DocumentImpl implements TechniqueLibrary
{
	/**
	 * The default value of the '{@link #getSituation() <em>Situation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSituation()
	 * @generated
	 * @ordered
	 */
	protected static final String SITUATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSituation() <em>Situation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSituation()
	 * @generated
	 * @ordered
	 */
	protected String situation = SITUATION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFacts() <em>Facts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFacts()
	 * @generated
	 * @ordered
	 */
	protected EList<Fact> facts;

	/**
	 * The cached value of the '{@link #getSetups() <em>Setups</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSetups()
	 * @generated
	 * @ordered
	 */
	protected EList<Setup> setups;

	/**
	 * The cached value of the '{@link #getTechniques() <em>Techniques</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTechniques()
	 * @generated
	 * @ordered
	 */
	protected EList<Technique> techniques;

	/**
	 * The cached value of the '{@link #getBailOut() <em>Bail Out</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBailOut()
	 * @generated
	 * @ordered
	 */
	protected EList<Role> bailOut;

	/**
	 * The cached value of the '{@link #getStopRules() <em>Stop Rules</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStopRules()
	 * @generated
	 * @ordered
	 */
	protected EList<StopRule> stopRules;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TechniqueLibraryImpl()
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
		return ModelPackage.Literals.TECHNIQUE_LIBRARY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSituation()
	{
		return situation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSituation(String newSituation)
	{
		String oldSituation = situation;
		situation = newSituation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TECHNIQUE_LIBRARY__SITUATION, oldSituation, situation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Fact> getFacts()
	{
		if (facts == null)
		{
			facts = new EObjectContainmentEList<Fact>(Fact.class, this, ModelPackage.TECHNIQUE_LIBRARY__FACTS);
		}
		return facts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Setup> getSetups()
	{
		if (setups == null)
		{
			setups = new EObjectContainmentEList<Setup>(Setup.class, this, ModelPackage.TECHNIQUE_LIBRARY__SETUPS);
		}
		return setups;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Technique> getTechniques()
	{
		if (techniques == null)
		{
			techniques = new EObjectContainmentEList<Technique>(Technique.class, this, ModelPackage.TECHNIQUE_LIBRARY__TECHNIQUES);
		}
		return techniques;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Role> getBailOut()
	{
		if (bailOut == null)
		{
			bailOut = new EObjectContainmentEList<Role>(Role.class, this, ModelPackage.TECHNIQUE_LIBRARY__BAIL_OUT);
		}
		return bailOut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StopRule> getStopRules()
	{
		if (stopRules == null)
		{
			stopRules = new EObjectContainmentEList<StopRule>(StopRule.class, this, ModelPackage.TECHNIQUE_LIBRARY__STOP_RULES);
		}
		return stopRules;
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
			case ModelPackage.TECHNIQUE_LIBRARY__FACTS:
				return ((InternalEList<?>)getFacts()).basicRemove(otherEnd, msgs);
			case ModelPackage.TECHNIQUE_LIBRARY__SETUPS:
				return ((InternalEList<?>)getSetups()).basicRemove(otherEnd, msgs);
			case ModelPackage.TECHNIQUE_LIBRARY__TECHNIQUES:
				return ((InternalEList<?>)getTechniques()).basicRemove(otherEnd, msgs);
			case ModelPackage.TECHNIQUE_LIBRARY__BAIL_OUT:
				return ((InternalEList<?>)getBailOut()).basicRemove(otherEnd, msgs);
			case ModelPackage.TECHNIQUE_LIBRARY__STOP_RULES:
				return ((InternalEList<?>)getStopRules()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.TECHNIQUE_LIBRARY__SITUATION:
				return getSituation();
			case ModelPackage.TECHNIQUE_LIBRARY__FACTS:
				return getFacts();
			case ModelPackage.TECHNIQUE_LIBRARY__SETUPS:
				return getSetups();
			case ModelPackage.TECHNIQUE_LIBRARY__TECHNIQUES:
				return getTechniques();
			case ModelPackage.TECHNIQUE_LIBRARY__BAIL_OUT:
				return getBailOut();
			case ModelPackage.TECHNIQUE_LIBRARY__STOP_RULES:
				return getStopRules();
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
			case ModelPackage.TECHNIQUE_LIBRARY__SITUATION:
				setSituation((String)newValue);
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__FACTS:
				getFacts().clear();
				getFacts().addAll((Collection<? extends Fact>)newValue);
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__SETUPS:
				getSetups().clear();
				getSetups().addAll((Collection<? extends Setup>)newValue);
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__TECHNIQUES:
				getTechniques().clear();
				getTechniques().addAll((Collection<? extends Technique>)newValue);
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__BAIL_OUT:
				getBailOut().clear();
				getBailOut().addAll((Collection<? extends Role>)newValue);
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__STOP_RULES:
				getStopRules().clear();
				getStopRules().addAll((Collection<? extends StopRule>)newValue);
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
			case ModelPackage.TECHNIQUE_LIBRARY__SITUATION:
				setSituation(SITUATION_EDEFAULT);
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__FACTS:
				getFacts().clear();
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__SETUPS:
				getSetups().clear();
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__TECHNIQUES:
				getTechniques().clear();
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__BAIL_OUT:
				getBailOut().clear();
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__STOP_RULES:
				getStopRules().clear();
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
			case ModelPackage.TECHNIQUE_LIBRARY__SITUATION:
				return SITUATION_EDEFAULT == null ? situation != null : !SITUATION_EDEFAULT.equals(situation);
			case ModelPackage.TECHNIQUE_LIBRARY__FACTS:
				return facts != null && !facts.isEmpty();
			case ModelPackage.TECHNIQUE_LIBRARY__SETUPS:
				return setups != null && !setups.isEmpty();
			case ModelPackage.TECHNIQUE_LIBRARY__TECHNIQUES:
				return techniques != null && !techniques.isEmpty();
			case ModelPackage.TECHNIQUE_LIBRARY__BAIL_OUT:
				return bailOut != null && !bailOut.isEmpty();
			case ModelPackage.TECHNIQUE_LIBRARY__STOP_RULES:
				return stopRules != null && !stopRules.isEmpty();
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
		result.append(" (situation: ");
		result.append(situation);
		result.append(')');
		return result.toString();
	}

} //TechniqueLibraryImpl
